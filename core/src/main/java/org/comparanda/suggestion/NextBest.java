package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.comparanda.bone.Portion;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.statistics.discriminant.GroupMoments;
import org.comparanda.statistics.discriminant.Shares;
import org.comparanda.taxon.TaxonName;

/** What would settle it: the measurements not yet taken, by what they are expected to tell. */
final class NextBest {
  private static final int MOST = 2;

  /** Below this many nats a measurement isn't worth the effort. */
  private static final double LEAST_GAIN = 0.01;

  private final Protocol protocol;
  private final Thresholds limits;
  private final Phrases phrases;
  private final Function<List<MeasurementCode>, Sample> samples;

  NextBest(
      Protocol protocol, ComparisonRules rules, Function<List<MeasurementCode>, Sample> samples) {
    this.phrases = rules.phrases();
    this.protocol = protocol;
    this.limits = rules.thresholds();
    this.samples = samples;
  }

  /**
   * The best two, by gain for the effort; none where only one taxon is in play.
   *
   * @param fits of the readings so far
   * @param unit the animal left out
   */
  List<NextMeasurement> of(
      ElementRows element,
      BoneRow bone,
      List<MeasurementCode> set,
      Portion portion,
      List<TaxonFit> fits,
      int unit) {
    List<TaxonFit> inPlay =
        fits.stream().filter(f -> f.typicality() >= limits.nothingFits() && f.share() > 0).toList();
    if (inPlay.size() < 2) {
      return List.of();
    }
    List<Worth> found = new ArrayList<>();
    for (MeasurementCode code : element.codes()) {
      Optional<Measurement> known = protocol.measurement(element.element(), code);
      boolean there =
          known.map(m -> m.needs().isEmpty() || m.needs().contains(portion)).orElse(true);
      if (there && !set.contains(code)) {
        double cost = known.map(Measurement::cost).orElse(1.0);
        gain(bone, set, code, inPlay, unit)
            .filter(gain -> gain >= LEAST_GAIN)
            .ifPresent(gain -> found.add(new Worth(code, gain, gain / cost)));
      }
    }
    found.sort(Comparator.comparingDouble(Worth::forTheEffort).reversed());
    double open = new Shares(shares(inPlay)).entropy();
    return found.stream()
        .limit(MOST)
        .map(w -> new NextMeasurement(w.code(), w.gain(), sentence(w, open)))
        .toList();
  }

  private record Worth(MeasurementCode code, double gain, double forTheEffort) {}

  /** Not there where the shelf has too few animals with the set and this measurement. */
  private Optional<Double> gain(
      BoneRow bone,
      List<MeasurementCode> set,
      MeasurementCode code,
      List<TaxonFit> inPlay,
      int unit) {
    List<MeasurementCode> larger = new ArrayList<>(set);
    larger.add(code);
    Sample sample = samples.apply(larger);
    GroupMoments moments = sample.momentsWithout(unit, Sample.offerOf(bone.side()));
    List<TaxonFit> known =
        inPlay.stream().filter(f -> moments.count(group(sample, f.taxon())) > 0).toList();
    int degrees = moments.degreesOfFreedom() - larger.size() + 1;
    if (known.size() < 2 || degrees < limits.degreesNeeded()) {
      return Optional.empty();
    }
    List<Double> shares =
        sample.taxa().stream()
            .map(
                taxon ->
                    known.stream()
                        .filter(f -> f.taxon().equals(taxon))
                        .map(TaxonFit::share)
                        .findFirst()
                        .orElse(0.0))
            .toList();
    return org.comparanda.statistics.discriminant.NextBest.expectedDrop(
            moments, shares, bone.vector(set))
        .value();
  }

  private static int group(Sample sample, TaxonName taxon) {
    return sample.taxa().indexOf(taxon);
  }

  /** Shares rescaled to the taxa in play. */
  private static List<Double> shares(List<TaxonFit> fits) {
    double sum = fits.stream().mapToDouble(TaxonFit::share).sum();
    return fits.stream().map(f -> f.share() / sum).toList();
  }

  private String sentence(Worth worth, double open) {
    double part = open > 0 ? worth.gain() / open : 0;
    String much =
        part >= 0.8
            ? "next.nearly"
            : part >= 0.6
                ? "next.most"
                : part >= 0.4 ? "next.half" : part >= 0.15 ? "next.some" : "next.little";
    return phrases.say("next", worth.code().value(), phrases.say(much));
  }
}
