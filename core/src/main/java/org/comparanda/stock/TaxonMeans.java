package org.comparanda.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.discriminant.GroupMoments;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.taxon.TaxonName;

/**
 * The mean of every taxon in one element, in units of the pooled spread within taxa.
 *
 * <p>An animal is one row: the mean of the logs of its bones. The spread comes from animals with
 * all measurements (the rarest are left out while there are too few), a mean from every animal that
 * has the measurement.
 */
final class TaxonMeans {
  private final List<TaxonName> taxa = new ArrayList<>();
  private final List<Integer> animals = new ArrayList<>();
  private final List<double[]> means = new ArrayList<>();
  private final int measurements;
  private final int degreesOfFreedom;

  private TaxonMeans(
      Map<TaxonName, List<Map<MeasurementCode, Double>>> rows,
      List<MeasurementCode> codes,
      Cholesky spread,
      int degreesOfFreedom) {
    this.measurements = codes.size();
    this.degreesOfFreedom = degreesOfFreedom;
    rows.forEach(
        (taxon, of) ->
            mean(of, codes)
                .ifPresent(
                    mean -> {
                      taxa.add(taxon);
                      animals.add(of.size());
                      means.add(spread.whiten(mean));
                    }));
  }

  /** Empty where too few animals have the same measurements, or there is but one taxon. */
  static Optional<TaxonMeans> of(Shelf shelf, ElementKey element) {
    Map<TaxonName, List<Map<MeasurementCode, Double>>> rows = new TreeMap<>();
    for (Animal animal : shelf.animals()) {
      List<ShelfBone> bones =
          animal.bones().stream().filter(b -> Stock.counts(b, element)).toList();
      if (animal.taxon().isPresent() && animal.feedsFits() && !bones.isEmpty()) {
        rows.computeIfAbsent(animal.taxon().get(), t -> new ArrayList<>()).add(logs(bones));
      }
    }
    Map<MeasurementCode, Integer> counts = new HashMap<>();
    rows.values()
        .forEach(of -> of.forEach(r -> r.keySet().forEach(c -> counts.merge(c, 1, Integer::sum))));
    List<MeasurementCode> codes =
        counts.keySet().stream()
            .sorted(
                java.util.Comparator.comparing((MeasurementCode c) -> counts.getOrDefault(c, 0))
                    .thenComparing(java.util.Comparator.naturalOrder()))
            .toList();
    for (int from = 0; from < codes.size() && rows.size() > 1; from++) {
      List<MeasurementCode> set = codes.subList(from, codes.size());
      GroupMoments moments = GroupMoments.of(complete(rows, set));
      Optional<Cholesky> spread = moments.pooledCovariance().then(Cholesky::of).value();
      if (spread.isPresent()) {
        return Optional.of(new TaxonMeans(rows, set, spread.get(), moments.degreesOfFreedom()))
            .filter(m -> m.taxa.size() > 1);
      }
    }
    return Optional.empty();
  }

  List<TaxonName> taxa() {
    return List.copyOf(taxa);
  }

  int animals(int taxon) {
    return animals.get(taxon);
  }

  double mean(int taxon, int measurement) {
    return means.get(taxon)[measurement];
  }

  int measurements() {
    return measurements;
  }

  int degreesOfFreedom() {
    return degreesOfFreedom;
  }

  /** The taxon whose mean lies nearest. */
  int nearest(int taxon) {
    int best = taxon == 0 ? 1 : 0;
    for (int other = 0; other < taxa.size(); other++) {
      if (other != taxon && squared(taxon, other) < squared(taxon, best)) {
        best = other;
      }
    }
    return best;
  }

  private double squared(int one, int other) {
    double sum = 0;
    for (int j = 0; j < measurements; j++) {
      double d = mean(one, j) - mean(other, j);
      sum += d * d;
    }
    return sum;
  }

  private static Map<MeasurementCode, Double> logs(List<ShelfBone> bones) {
    Map<MeasurementCode, List<Double>> values = new TreeMap<>();
    for (ShelfBone bone : bones) {
      bone.values()
          .forEach(
              (code, mm) -> {
                if (mm > 0) {
                  values.computeIfAbsent(code, c -> new ArrayList<>()).add(Math.log(mm));
                }
              });
    }
    Map<MeasurementCode, Double> means = new TreeMap<>();
    values.forEach(
        (code, logs) -> means.put(code, logs.stream().mapToDouble(x -> x).average().orElseThrow()));
    return means;
  }

  private static GroupedRows complete(
      Map<TaxonName, List<Map<MeasurementCode, Double>>> rows, List<MeasurementCode> codes) {
    GroupedRows.Builder builder = GroupedRows.builder(codes.size(), rows.size());
    int group = 0;
    int unit = 0;
    for (List<Map<MeasurementCode, Double>> of : rows.values()) {
      for (Map<MeasurementCode, Double> row : of) {
        if (row.keySet().containsAll(codes)) {
          builder.add(
              group, unit++, codes.stream().mapToDouble(c -> row.getOrDefault(c, 0.0)).toArray());
        }
      }
      group++;
    }
    return builder.build();
  }

  private static Optional<double[]> mean(
      List<Map<MeasurementCode, Double>> rows, List<MeasurementCode> codes) {
    double[] mean = new double[codes.size()];
    for (int j = 0; j < mean.length; j++) {
      MeasurementCode code = codes.get(j);
      var average =
          rows.stream()
              .filter(r -> r.containsKey(code))
              .mapToDouble(r -> r.getOrDefault(code, 0.0))
              .average();
      if (average.isEmpty()) {
        return Optional.empty();
      }
      mean[j] = average.getAsDouble();
    }
    return Optional.of(mean);
  }
}
