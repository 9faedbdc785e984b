package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.comparanda.statistics.Outcome;

/**
 * By how much one method's log score is above another's when both judge the same rows, each unit
 * held out in turn.
 *
 * @param rows compared: those whose group is in the fit without their unit
 * @param mean of the differences, in nats a row
 * @param standardError of that mean, as of independent rows
 */
public record PairedGain(int rows, double mean, double standardError) {
  /** Not estimable with fewer than two rows that both methods can judge. */
  public static Outcome<PairedGain> of(
      GroupedRows rows, Discriminant one, Discriminant other, Priors priors) {
    return one instanceof PlainSpread a && other instanceof PlainSpread b
        ? HeldOutDistances.of(rows)
            .fold(d -> quick(rows, d, a, b, priors), none -> refitted(rows, one, other, priors))
        : refitted(rows, one, other, priors);
  }

  private static Outcome<PairedGain> quick(
      GroupedRows rows,
      HeldOutDistances distances,
      PlainSpread one,
      PlainSpread other,
      Priors priors) {
    LogDensity a = one.density(rows.columns(), distances.degreesOfFreedom());
    LogDensity b = other.density(rows.columns(), distances.degreesOfFreedom());
    List<Double> differences = new ArrayList<>();
    for (int i = 0; i < rows.rows(); i++) {
      int row = i;
      distances
          .of(i)
          .value()
          .ifPresent(
              squared ->
                  differences.add(
                      ShareScore.log(shares(distances, row, squared, a, priors), rows.group(row))
                          - ShareScore.log(
                              shares(distances, row, squared, b, priors), rows.group(row))));
    }
    return of(differences);
  }

  private static Shares shares(
      HeldOutDistances distances,
      int row,
      List<Double> squared,
      LogDensity density,
      Priors priors) {
    double[] logs = new double[squared.size()];
    for (int g = 0; g < logs.length; g++) {
      int n = distances.count(row, g);
      logs[g] = n > 0 ? density.at(n, squared.get(g)) : Double.NEGATIVE_INFINITY;
    }
    return Shares.of(priors, logs);
  }

  private static Outcome<PairedGain> refitted(
      GroupedRows rows, Discriminant one, Discriminant other, Priors priors) {
    UnitMoments units = UnitMoments.of(rows);
    Map<Integer, Outcome<DiscriminantModel>> ones = new HashMap<>();
    Map<Integer, Outcome<DiscriminantModel>> others = new HashMap<>();
    List<Double> differences = new ArrayList<>();
    for (int i = 0; i < rows.rows(); i++) {
      int unit = rows.unit(i);
      int group = rows.group(i);
      double[] x = rows.row(i);
      GroupMoments left = units.without(unit);
      if (left.count(group) > 0) {
        ones.computeIfAbsent(unit, u -> one.fitWithout(unit, rows, left, priors))
            .then(
                a ->
                    others
                        .computeIfAbsent(unit, u -> other.fitWithout(unit, rows, left, priors))
                        .then(
                            b ->
                                Outcome.of(
                                    ShareScore.log(a.shares(x), group)
                                        - ShareScore.log(b.shares(x), group))))
            .value()
            .ifPresent(differences::add);
      }
    }
    return of(differences);
  }

  private static Outcome<PairedGain> of(List<Double> differences) {
    int n = differences.size();
    if (n < 2) {
      return Outcome.none(
          "Fewer than two animals could be judged by both methods.",
          "Add animals, or leave measurements out.");
    }
    double mean = differences.stream().mapToDouble(d -> d / n).sum();
    double squares = differences.stream().mapToDouble(d -> (d - mean) * (d - mean)).sum();
    return Outcome.of(new PairedGain(n, mean, Math.sqrt(squares / (n - 1) / n)));
  }

  /** Whether the gain is more than chance easily makes: above one standard error. */
  public boolean clear() {
    return mean > standardError;
  }
}
