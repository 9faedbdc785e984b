package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.statistics.discriminant.ShareScore;
import org.comparanda.statistics.discriminant.Shares;
import org.comparanda.taxon.TaxonName;

/** Counts a trial that was run. */
final class TrialReport {
  private TrialReport() {}

  static Trial of(
      TrialRun run,
      String method,
      ComparisonRules rules,
      Function<List<MeasurementCode>, Sample> samples) {
    List<HeldOut> animals = run.animals();
    return new Trial(
        run.element().element(),
        run.set(),
        method,
        rules.priors().name(),
        (int) animals.stream().map(r -> r.offered().unit()).distinct().count(),
        TrialRun.hits(animals),
        taxa(animals),
        table(animals),
        run.bones().stream().map(row -> row(run, row)).toList(),
        TrialRun.hits(run.bones()),
        score(animals, ShareScore::log),
        score(animals, ShareScore::brier),
        CalibratedList.quality(animals, samples, rules.thresholds()),
        Reliability.of(animals));
  }

  private static TrialRow row(TrialRun run, HeldOut row) {
    AnimalId animal = run.element().animals().get(row.offered().unit()).animal();
    return new TrialRow(
        animal,
        row.offered().bone().side(),
        row.taxon(),
        row.set(),
        row.suggested(),
        row.shares().then(s -> Outcome.of(s.of(s.largest()))),
        row.fits().then(f -> Outcome.of(f.get(0).typicality())),
        row.beforeGate());
  }

  private static List<Trial.TaxonRate> taxa(List<HeldOut> animals) {
    List<Trial.TaxonRate> rates = new ArrayList<>();
    for (TaxonName taxon : animals.stream().map(HeldOut::taxon).distinct().sorted().toList()) {
      Proportion hits =
          TrialRun.hits(animals.stream().filter(r -> r.taxon().equals(taxon)).toList());
      Proportion called =
          TrialRun.hits(
              animals.stream()
                  .filter(r -> r.suggested().filter(taxon::equals).isPresent())
                  .toList());
      rates.add(new Trial.TaxonRate(taxon, hits, called));
    }
    return rates;
  }

  private static Map<TaxonName, Map<TaxonName, Integer>> table(List<HeldOut> animals) {
    Map<TaxonName, Map<TaxonName, Integer>> table = new TreeMap<>();
    for (HeldOut row : animals) {
      Map<TaxonName, Integer> counts = table.computeIfAbsent(row.taxon(), t -> new TreeMap<>());
      row.suggested().ifPresent(s -> counts.merge(s, 1, Integer::sum));
    }
    return table;
  }

  /** Mean over the animals whose taxon is still in the fit without them. */
  private static Outcome<Double> score(
      List<HeldOut> animals, BiFunction<Shares, Integer, Double> of) {
    double sum = 0;
    int count = 0;
    for (HeldOut row : animals) {
      if (row.taxonInFit() && row.shares().value().isPresent()) {
        sum += of.apply(row.shares().value().get(), row.group());
        count++;
      }
    }
    return count == 0
        ? Outcome.none(
            "No animal could be judged by others of its taxon.",
            "Measure at least two animals of some taxon.")
        : Outcome.of(sum / count);
  }
}
