package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.discriminant.GroupDistances;
import org.comparanda.statistics.discriminant.GroupMoments;

/**
 * One bone against the other animals of its taxon, in natural logs.
 *
 * @param typicality chance that a true member lies at least as far out
 * @param values each measurement against what the others of the bone let expect
 */
record Judged(double typicality, List<Expected> values) {
  Judged {
    values = List.copyOf(values);
  }

  /**
   * @param residual value minus expected
   * @param variance of that difference for a sound bone
   * @param degreesOfFreedom behind the variance
   * @param sideVariance variance of the difference between the sides; empty where too few pairs
   *     tell it
   */
  record Expected(
      MeasurementCode code,
      double residual,
      double variance,
      int degreesOfFreedom,
      Optional<Double> sideVariance) {
    double standardised() {
      return residual / Math.sqrt(variance);
    }
  }

  /** The measurement that is oddest given the rest. */
  Expected oddest() {
    return values.stream()
        .max(java.util.Comparator.comparingDouble(v -> Math.abs(v.standardised())))
        .orElseThrow();
  }

  static Optional<Judged> of(
      List<MeasurementCode> codes,
      GroupMoments others,
      GroupDistances distances,
      int group,
      double[] logs) {
    double squared = distances.squared(group, logs);
    return others
        .spread()
        .then(Cholesky::of)
        .value()
        .map(
            spread ->
                new Judged(
                    distances.typicality(group, squared),
                    expected(codes, others, spread, group, logs)));
  }

  /** By the inverse P of the spread: residual (P d)ⱼ / Pⱼⱼ with variance (1 + 1/n) / Pⱼⱼ. */
  private static List<Expected> expected(
      List<MeasurementCode> codes, GroupMoments others, Cholesky spread, int group, double[] logs) {
    int p = codes.size();
    double[] mean = others.mean(group);
    double[] d = new double[p];
    for (int j = 0; j < p; j++) {
      d[j] = logs[j] - mean[j];
    }
    double[] solved = spread.solve(d);
    double inflation = 1 + 1.0 / others.count(group);
    List<Expected> values = new ArrayList<>();
    for (int j = 0; j < p; j++) {
      double[] one = new double[p];
      one[j] = 1;
      double precision = spread.solve(one)[j];
      double side = 4 * others.oneSide().get(j, j);
      values.add(
          new Expected(
              codes.get(j),
              solved[j] / precision,
              inflation / precision,
              Math.max(1, others.degreesOfFreedom() - p + 1),
              others.judgesOneSide() && side > 0 ? Optional.of(side) : Optional.empty()));
    }
    return values;
  }
}
