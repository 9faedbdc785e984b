package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.discriminant.GroupMoments;

/** Says what to do where the shelf has too few animals for a set: leave out, or add. */
final class TooThin {
  private final Thresholds limits;
  private final Phrases phrases;
  private final Function<List<MeasurementCode>, Sample> samples;
  private final int smallestSet;

  TooThin(ComparisonRules rules, Function<List<MeasurementCode>, Sample> samples) {
    this.limits = rules.thresholds();
    this.phrases = rules.phrases();
    this.samples = samples;
    this.smallestSet = Coordinates.fewest(rules.scale());
  }

  /**
   * The sentence.
   *
   * @param why what the fit says is missing; said where it isn't just the number of animals
   */
  String sentence(List<MeasurementCode> set, int unit, String why) {
    GroupMoments moments = samples.apply(set).momentsWithout(unit, Sample.Offer.ANIMAL);
    int degrees = degrees(set, unit);
    String problem =
        moments.rows() == 0
            ? phrases.say("thin.none", together(set))
            : degrees >= limits.degreesNeeded() ? unended(why) : few(moments, set);
    return phrases.say("thin", problem, remedy(set, unit, degrees));
  }

  private String few(GroupMoments moments, List<MeasurementCode> set) {
    return phrases.say(
        "thin.few",
        moments.rows(),
        phrases.say("animals", moments.rows()),
        phrases.say("taxa", moments.groupsPresent()),
        together(set));
  }

  private String together(List<MeasurementCode> set) {
    return set.size() == 1 ? list(set) : phrases.say("thin.together", list(set));
  }

  private String remedy(List<MeasurementCode> set, int unit, int degrees) {
    List<MeasurementCode> left = set;
    List<MeasurementCode> out = new ArrayList<>();
    while (left.size() > smallestSet) {
      MeasurementCode worst = worst(left, unit);
      out.add(worst);
      left = left.stream().filter(c -> !c.equals(worst)).toList();
      if (degrees(left, unit) >= limits.degreesNeeded()) {
        int animals = samples.apply(left).momentsWithout(unit, Sample.Offer.ANIMAL).rows();
        return phrases.say(
            "thin.leave",
            phrases.all(out.stream().map(MeasurementCode::value).toList()),
            animals,
            phrases.say("animals", animals));
      }
    }
    int missing = Math.max(1, limits.degreesNeeded() - degrees);
    return phrases.say("thin.add", list(set), missing);
  }

  /** The measurement without which the fit stands on the most degrees of freedom. */
  private MeasurementCode worst(List<MeasurementCode> set, int unit) {
    return set.stream()
        .max(
            Comparator.comparingInt(
                code -> degrees(set.stream().filter(c -> !c.equals(code)).toList(), unit)))
        .orElseThrow();
  }

  private int degrees(List<MeasurementCode> set, int unit) {
    return samples.apply(set).degreesWithout(unit);
  }

  private String list(List<MeasurementCode> set) {
    return phrases.all(set.stream().map(MeasurementCode::value).toList());
  }

  private static String unended(String sentence) {
    return Character.toLowerCase(sentence.charAt(0))
        + sentence.substring(1).replaceFirst("\\.$", "");
  }
}
