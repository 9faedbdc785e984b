package org.comparanda.suggestion;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.discriminant.Contribution;
import org.comparanda.statistics.discriminant.GroupDistances;
import org.comparanda.taxon.TaxonName;

/** Why the answer is what it is, in plain sentences. */
final class Explanation {
  private final Sample sample;
  private final BoneRow bone;
  private final List<TaxonFit> fits;
  private final Verdict verdict;
  private final Phrases phrases;

  Explanation(Sample sample, BoneRow bone, List<TaxonFit> fits, Verdict verdict, Phrases phrases) {
    this.phrases = phrases;
    this.sample = sample;
    this.bone = bone;
    this.fits = fits;
    this.verdict = verdict;
  }

  /**
   * What speaks for the first taxon against the second, or what keeps the bone from the nearest.
   */
  Optional<String> why(GroupDistances distances) {
    if (sample.set().size() != sample.columns()) {
      return Optional.empty();
    }
    return verdict.candidates().isEmpty() || fits.size() < 2
        ? Optional.of(distance(distances))
        : Optional.of(difference(distances, fits.get(0).taxon(), fits.get(1).taxon()));
  }

  private String distance(GroupDistances distances) {
    TaxonFit nearest =
        fits.stream()
            .max(Comparator.comparingDouble(TaxonFit::typicality).thenComparing(TaxonFit::share))
            .orElseThrow();
    List<Contribution> parts =
        distances.contributions(group(nearest.taxon()), sample.numbers(bone));
    Contribution most =
        parts.stream().max(Comparator.comparingDouble(Contribution::dropIfLeftOut)).orElseThrow();
    return sample.set().size() == 1
        ? phrases.say("why.alone", sample.set().get(0).value())
        : phrases.say(
            "why.apart",
            sample.set().get(most.column()).value(),
            nearest.taxon().value(),
            phrases.number(nearest.distanceSquared()),
            phrases.number(Math.max(0, nearest.distanceSquared() - most.dropIfLeftOut())));
  }

  private String difference(GroupDistances distances, TaxonName first, TaxonName second) {
    List<Double> parts = distances.preference(group(first), group(second), sample.numbers(bone));
    List<MeasurementCode> speakFor = speaking(parts, 1);
    List<MeasurementCode> speakAgainst = speaking(parts, -1);
    if (speakFor.isEmpty()) {
      return phrases.say("why.prior", first.value(), second.value());
    }
    String most = speakFor.size() == 1 ? "" : phrases.say("why.for.most", speakFor.get(0).value());
    String against =
        speakAgainst.isEmpty()
            ? "."
            : phrases.say("why.against", speakAgainst.size(), phrases.all(names(speakAgainst)));
    return phrases.say(
        "why.for",
        speakFor.size(),
        phrases.all(names(speakFor)),
        first.value(),
        second.value(),
        most,
        against);
  }

  /** Measurements whose part has that sign and is worth a word, largest first. */
  private List<MeasurementCode> speaking(List<Double> parts, int sign) {
    double largest = parts.stream().mapToDouble(Math::abs).max().orElse(0);
    return IntStream.range(0, parts.size())
        .boxed()
        .filter(j -> sign * parts.get(j) > 0.1 * largest)
        .sorted(Comparator.comparingDouble((Integer j) -> -sign * parts.get(j)))
        .map(j -> sample.set().get(j))
        .toList();
  }

  /** Taxa in play with so few animals that they have no spread of their own. */
  Optional<String> thin() {
    List<String> thin =
        fits.stream()
            .filter(f -> f.thin() && verdict.taxa().contains(f.taxon()))
            .map(f -> f.taxon() + " (" + phrases.say("animals", f.animals()) + ")")
            .toList();
    return thin.isEmpty()
        ? Optional.empty()
        : Optional.of(phrases.say("why.thin", phrases.all(thin)));
  }

  Optional<String> lessLikely() {
    return verdict.lessLikely().isEmpty()
        ? Optional.empty()
        : Optional.of(phrases.say("why.less", phrases.all(Wording.names(verdict.lessLikely()))));
  }

  private int group(TaxonName taxon) {
    return sample.taxa().indexOf(taxon);
  }

  private static List<String> names(List<MeasurementCode> codes) {
    return codes.stream().map(MeasurementCode::value).toList();
  }
}
