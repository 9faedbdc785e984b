package org.comparanda.suggestion;

import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.discriminant.Contribution;
import org.comparanda.statistics.discriminant.GroupDistances;
import org.comparanda.taxon.TaxonName;

/** The taxa that the readings so far rule out, each with one sentence that says why. */
final class DrawerList {
  private final Map<TaxonName, List<AnimalRow>> animals;
  private final Sample sample;
  private final GroupDistances distances;
  private final BoneRow bone;
  private final ComparisonRules rules;
  private final Phrases phrases;

  DrawerList(Fit fit, GroupDistances distances, BoneRow bone, ComparisonRules rules) {
    this.animals = fit.animals().stream().collect(Collectors.groupingBy(AnimalRow::taxon));
    this.sample = fit.sample();
    this.distances = distances;
    this.bone = bone;
    this.rules = rules;
    this.phrases = rules.phrases();
  }

  /** A taxon lies in the drawer if and only if its typicality on all readings is below the bar. */
  List<DrawerEntry> of(List<TaxonFit> fits) {
    return fits.stream()
        .filter(f -> f.typicality() < rules.thresholds().nothingFits())
        .map(this::entry)
        .toList();
  }

  private DrawerEntry entry(TaxonFit fit) {
    boolean few = fit.animals() < rules.thresholds().ruleOutAnimals();
    String why =
        rules.scale() == Scale.PROPORTIONS ? phrases.say("drawer.proportions") : why(fit.taxon());
    return few
        ? new DrawerEntry(
            fit.taxon(),
            phrases.say("drawer.few", fit.animals(), why),
            DrawerEntry.Standing.TOO_FEW_TO_RULE_OUT)
        : new DrawerEntry(fit.taxon(), why, DrawerEntry.Standing.RULED_OUT);
  }

  private String why(TaxonName taxon) {
    MeasurementCode code = strongest(taxon);
    DoubleSummaryStatistics shelf =
        animals.getOrDefault(taxon, List.of()).stream()
            .flatMap(a -> Optional.ofNullable(a.mean().values().get(code)).stream())
            .mapToDouble(v -> v)
            .summaryStatistics();
    int count = (int) shelf.getCount();
    double reading = plain(bone.values().getOrDefault(code, 0.0));
    double smallest = plain(shelf.getMin());
    double largest = plain(shelf.getMax());
    if (reading < smallest) {
      return phrases.say(
          "drawer.under", code.value(), away(smallest - reading), edge("smallest", count));
    }
    if (reading > largest) {
      return phrases.say(
          "drawer.over", code.value(), away(reading - largest), edge("largest", count));
    }
    return phrases.say("drawer.inside", code.value(), phrases.say("animals", count));
  }

  private MeasurementCode strongest(TaxonName taxon) {
    int group = sample.taxa().indexOf(taxon);
    return distances.contributions(group, sample.numbers(bone)).stream()
        .max(Comparator.comparingDouble(Contribution::part))
        .map(c -> sample.set().get(c.column()))
        .orElseThrow();
  }

  private String away(double difference) {
    return phrases.number(difference) + (rules.scale() == Scale.RAW ? "" : " mm");
  }

  private String edge(String which, int animals) {
    return animals == 1 ? phrases.say("drawer.only") : phrases.say("drawer." + which, animals);
  }

  private double plain(double scaled) {
    return ElementRows.offScale(scaled, rules.scale());
  }
}
