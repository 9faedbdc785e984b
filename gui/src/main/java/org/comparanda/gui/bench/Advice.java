package org.comparanda.gui.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.comparanda.bone.BoneAge;
import org.comparanda.house.RulesInForce;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.statistics.line.PredictionInterval;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.suggestion.Trial;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** What one snapshot of the shelf says of bones: kind and size. Safe for many threads. */
public final class Advice {
  private final Shelf shelf;
  private final Protocol protocol;
  private final TaxonTree tree;
  private final Locale language;
  private final RulesInForce rules;
  private final Map<BoneAge, Comparison> byAge = new ConcurrentHashMap<>();

  /**
   * @param rules of the house
   * @param language of the sentences
   */
  public Advice(
      Shelf shelf, Protocol protocol, TaxonTree tree, RulesInForce rules, Locale language) {
    this.language = language;
    this.shelf = shelf;
    this.protocol = protocol;
    this.tree = tree;
    this.rules = rules;
  }

  /** The shelf asked. */
  Shelf shelf() {
    return shelf;
  }

  /** Everything that the Bench shows of a bone. */
  Finding of(BoneInHand bone, BoneAge age) {
    Comparison comparison = byAge.computeIfAbsent(age, this::comparison);
    Suggestion suggestion = comparison.suggest(bone);
    return new Finding(
        bone,
        suggestion,
        comparison.points(bone.element(), bone),
        size(suggestion, bone),
        comparison);
  }

  /**
   * What may come after the answer: the trial of its very set, the next answers reckoned ahead, the
   * comparison of methods. Tells what it has as soon as it has it.
   *
   * @param overtaken asked often; when it says yes, the rest is left
   */
  void afterwards(
      Finding finding, BoneAge age, BooleanSupplier overtaken, Consumer<Afterwards> tell) {
    Suggestion suggestion = finding.suggestion();
    Comparison comparison = byAge.computeIfAbsent(age, this::comparison);
    if (overtaken.getAsBoolean() || suggestion.taxa().isEmpty()) {
      return;
    }
    Optional<Trial> trial =
        Optional.of(comparison.trial(suggestion.element(), suggestion.measurements()));
    tell.accept(new Afterwards(trial, Optional.empty()));
    comparison.prepare(finding.bone(), overtaken);
    if (!overtaken.getAsBoolean()) {
      byAge
          .computeIfAbsent(BoneAge.NOT_KNOWN, this::comparison)
          .secondOpinions(suggestion.element(), overtaken)
          .value()
          .ifPresent(opinions -> tell.accept(new Afterwards(trial, Optional.of(opinions))));
    }
  }

  private Comparison comparison(BoneAge age) {
    return Comparison.of(
        shelf, protocol, tree, rules.comparison().withAge(age).withLanguage(language));
  }

  /** Body mass by the line that is surest for this bone, if it is of the likeliest candidate. */
  private Optional<Size> size(Suggestion suggestion, BoneInHand bone) {
    return suggestion.taxa().stream()
        .filter(fit -> suggestion.candidates().contains(fit.taxon()))
        .max(Comparator.comparingDouble(TaxonFit::share))
        .flatMap(fit -> mass(fit.taxon(), bone));
  }

  private Optional<Size> mass(TaxonName taxon, BoneInHand bone) {
    SizeDesk desk = SizeDesk.of(shelf, protocol);
    SizeDesk others = bone.animal().map(desk::without).orElse(desk);
    List<Size> sizes =
        bone.values().keySet().stream()
            .map(code -> SizeQuestion.of("body_mass", bone.element() + "." + code))
            .map(question -> withTaxon(question, taxon))
            .flatMap(question -> others.line(question).value().stream())
            .flatMap(line -> size(taxon, line, bone).stream())
            .toList();
    return sizes.stream().min(Comparator.comparingDouble(s -> s.highG() / s.lowG()));
  }

  private static SizeQuestion withTaxon(SizeQuestion q, TaxonName taxon) {
    return new SizeQuestion(
        q.predict(), q.from(), java.util.Set.of(taxon), q.line(), q.scale(), q.level());
  }

  private static Optional<Size> size(TaxonName taxon, FittedLine line, BoneInHand bone) {
    return line.estimate(bone)
        .value()
        .flatMap(
            estimate ->
                estimate
                    .prediction()
                    .value()
                    .map(interval -> new Size(taxon, line.n(), estimate, interval)));
  }

  /**
   * Body mass of the animal.
   *
   * @param taxon if it is of this taxon
   * @param animals animals of the line
   */
  record Size(TaxonName taxon, int animals, SizeEstimate estimate, PredictionInterval interval) {
    double lowG() {
      return interval.lower();
    }

    double highG() {
      return interval.upper();
    }
  }
}
