package org.comparanda.gui.bench;

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
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.statistics.line.PredictionInterval;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.Suggestion;
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
  private final List<TaxonName> taxa;
  private final MassLines masses;
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
    this.taxa = shelf.taxa();
    this.masses = new MassLines(shelf, protocol);
  }

  /** Whether it rests on an equal shelf, the same names and equal rules. */
  boolean sameAs(Advice other) {
    return shelf.equals(other.shelf) && tree == other.tree && rules.equals(other.rules);
  }

  /** The shelf asked. */
  Shelf shelf() {
    return shelf;
  }

  /** The taxa of the shelf, in alphabetical order. */
  List<TaxonName> taxa() {
    return taxa;
  }

  /** Everything that the Bench shows of a bone. */
  Finding of(BoneInHand bone, BoneAge age) {
    Comparison comparison = byAge.computeIfAbsent(age, this::comparison);
    Suggestion suggestion = comparison.suggest(bone);
    return new Finding(
        bone,
        suggestion,
        comparison.points(bone.element(), bone),
        masses.of(suggestion, bone),
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
