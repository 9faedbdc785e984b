package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.Shares;
import org.comparanda.taxon.TaxonName;

/**
 * A trial as it was run: every bone of an element offered, with the part of the set that it has, to
 * the shelf without its animal.
 */
final class TrialRun {
  private final ElementRows element;
  private final List<MeasurementCode> set;
  private final List<HeldOut> rows;

  private TrialRun(ElementRows element, List<MeasurementCode> set, List<HeldOut> rows) {
    this.element = element;
    this.set = List.copyOf(set);
    this.rows = List.copyOf(rows);
  }

  /**
   * Runs it.
   *
   * @param samples the sample of a set of measurements
   */
  static TrialRun of(
      ElementRows element,
      List<MeasurementCode> set,
      ComparisonRules rules,
      AnswerRules answers,
      Function<List<MeasurementCode>, Sample> samples) {
    return of(Offered.all(element, rules.counting()), element, set, rules, answers, samples);
  }

  /** The part of it that an answer rests on: the animals that have the whole set. */
  static TrialRun ofWholeAnimals(
      ElementRows element,
      List<MeasurementCode> set,
      ComparisonRules rules,
      AnswerRules answers,
      Function<List<MeasurementCode>, Sample> samples) {
    List<Offered> whole =
        Offered.all(element, rules.counting()).stream()
            .filter(o -> o.level().countsAsAnimal() && o.bone().has(set))
            .toList();
    return of(whole, element, set, rules, answers, samples);
  }

  private static TrialRun of(
      List<Offered> offered,
      ElementRows element,
      List<MeasurementCode> set,
      ComparisonRules rules,
      AnswerRules answers,
      Function<List<MeasurementCode>, Sample> samples) {
    Map<List<MeasurementCode>, List<Integer>> bySet = new LinkedHashMap<>();
    for (int i = 0; i < offered.size(); i++) {
      List<MeasurementCode> part = offered.get(i).bone().partOf(set);
      if (Coordinates.possible(rules.scale(), part.size())) {
        bySet.computeIfAbsent(part, s -> new ArrayList<>()).add(i);
      }
    }
    Map<Integer, HeldOut> judged = new LinkedHashMap<>();
    bySet.forEach(
        (part, places) -> {
          for (Sample.Offer offer : Sample.Offer.values()) {
            judge(samples.apply(part), offer, offered, places, rules, answers, judged);
          }
        });
    List<HeldOut> inOrder = new ArrayList<>();
    for (int i = 0; i < offered.size(); i++) {
      Optional.ofNullable(judged.get(i)).ifPresent(inOrder::add);
    }
    return new TrialRun(element, set, inOrder);
  }

  private static void judge(
      Sample sample,
      Sample.Offer offer,
      List<Offered> offered,
      List<Integer> places,
      ComparisonRules rules,
      AnswerRules answers,
      Map<Integer, HeldOut> judged) {
    List<Integer> here = places.stream().filter(i -> offered.get(i).offer() == offer).toList();
    GroupedRows.Builder table = GroupedRows.builder(sample.columns(), sample.taxa().size());
    for (int i : here) {
      Offered bone = offered.get(i);
      int group = sample.taxa().indexOf(sample.animal(bone.unit()).taxon());
      table.add(group, bone.unit(), sample.numbers(bone.bone()));
    }
    MethodChoice choice = sample.choice();
    Outcome<org.comparanda.statistics.discriminant.Trial> trial =
        rules
            .priors()
            .among(sample)
            .then(
                priors ->
                    Outcome.of(
                        org.comparanda.statistics.discriminant.Trial.of(
                            sample.rows(offer), table.build(), choice.method(), priors)));
    for (int j = 0; j < here.size(); j++) {
      int row = j;
      Offered bone = offered.get(here.get(j));
      HeldOut heldOut =
          sample.filled(bone.unit()).value().isPresent()
              ? withHoles(sample, bone, rules, answers)
              : heldOut(
                  sample,
                  bone,
                  trial.then(t -> Outcome.of(t.rows().get(row))),
                  rules.thresholds(),
                  answers);
      judged.put(here.get(j), heldOut);
    }
  }

  /** Refitted without the animal, as the Bench does it. */
  private static HeldOut withHoles(
      Sample sample, Offered offered, ComparisonRules rules, AnswerRules answers) {
    Fit fit = Fit.of(sample, offered.unit(), offered.offer(), rules);
    Outcome<List<TaxonFit>> fits = fit.fits(offered.bone());
    TaxonName taxon = sample.animal(offered.unit()).taxon();
    int group = sample.taxa().indexOf(taxon);
    return new HeldOut(
        offered,
        sample.set(),
        taxon,
        group,
        fits.value().map(f -> f.get(0).taxon()),
        fit.model().then(m -> Outcome.of(m.shares(sample.numbers(offered.bone())))),
        fit.moments().count(group) > 0,
        fits,
        fits.fold(f -> answers.beforeGate(f).answer(), none -> Answer.SHELF_TOO_THIN));
  }

  private static HeldOut heldOut(
      Sample sample,
      Offered offered,
      Outcome<org.comparanda.statistics.discriminant.TrialRow> row,
      Thresholds limits,
      AnswerRules answers) {
    TaxonName taxon = sample.animal(offered.unit()).taxon();
    Outcome<Shares> shares = row.then(r -> r.shares());
    Outcome<List<TaxonFit>> fits =
        row.then(
            r ->
                r.shares()
                    .then(s -> r.distances().then(d -> Outcome.of(Fits.of(sample.taxa(), s, d)))));
    boolean deepEnough =
        row.fold(
            r -> r.rowsLeft() - r.groupsLeft() - sample.columns() + 1 >= limits.degreesNeeded(),
            none -> false);
    Answer answer =
        fits.fold(
            f -> deepEnough ? answers.beforeGate(f).answer() : Answer.SHELF_TOO_THIN,
            none -> Answer.SHELF_TOO_THIN);
    Optional<TaxonName> suggested =
        fits.value()
            .map(f -> f.get(0).taxon())
            .or(() -> shares.value().map(s -> sample.taxa().get(s.largest())));
    return new HeldOut(
        offered,
        sample.set(),
        taxon,
        sample.taxa().indexOf(taxon),
        suggested,
        shares,
        sample.hasOthers(offered.unit(), taxon),
        fits,
        answer);
  }

  ElementRows element() {
    return element;
  }

  List<MeasurementCode> set() {
    return set;
  }

  /** One row per bone offered. */
  List<HeldOut> bones() {
    return rows.stream().filter(r -> r.offered().level().countsAsBone()).toList();
  }

  /** One row per animal offered. */
  List<HeldOut> animals() {
    return rows.stream().filter(r -> r.offered().level().countsAsAnimal()).toList();
  }

  /** Of the animals that this very set answers "one: X" before the gate, those that are X. */
  Proportion gate(TaxonName taxon, int ownUnit) {
    return hits(whole(ownUnit).stream().filter(row -> row.namesAlone(taxon)).toList());
  }

  /** Of the animals of these taxa, those whose own taxon has the largest share. */
  Proportion toldApart(Collection<TaxonName> taxa, int ownUnit) {
    return hits(whole(ownUnit).stream().filter(row -> taxa.contains(row.taxon())).toList());
  }

  private List<HeldOut> whole(int ownUnit) {
    return animals().stream()
        .filter(row -> row.set().equals(set) && row.offered().unit() != ownUnit)
        .toList();
  }

  static Proportion hits(List<HeldOut> rows) {
    return new Proportion((int) rows.stream().filter(HeldOut::hit).count(), rows.size());
  }
}
