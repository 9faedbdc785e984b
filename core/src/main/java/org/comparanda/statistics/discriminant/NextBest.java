package org.comparanda.statistics.discriminant;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * By how much one more measurement is expected to lower the entropy of the shares, in nats: what it
 * is worth before it is taken.
 *
 * <p>Given the values at hand, the measurement is normal in each group, with the regression of W;
 * it would then change the shares by Bayes. The entropy after it is averaged over the groups by
 * their present shares with 41-point Gauss–Hermite quadrature. Source: Lindley 1956, Ann. Math.
 * Stat. 27:986–1005.
 */
public final class NextBest {
  private static final GaussIntegrator HERMITE = new GaussIntegratorFactory().hermite(41);

  private NextBest() {}

  /**
   * Expected drop of entropy.
   *
   * @param moments of the columns at hand, in their order, and the candidate as the last one
   * @param shares present shares, zero for groups out of play; scaled to sum 1 here. A group with a
   *     share must have rows
   * @param row values at hand, one fewer than the columns; none if nothing is measured yet
   */
  public static Outcome<Double> expectedDrop(
      GroupMoments moments, List<Double> shares, double... row) {
    int last = moments.columns() - 1;
    double[] x = Vectors.checked(last, row);
    return moments
        .spread()
        .then(w -> regression(w, last))
        .then(line -> Outcome.of(drop(moments, line, new Shares(scaled(shares)), x)));
  }

  private static Outcome<Filling> regression(SymmetricMatrix w, int last) {
    int[] known = new int[last];
    for (int j = 0; j < last; j++) {
      known[j] = j;
    }
    return Filling.of(w, known);
  }

  private static List<Double> scaled(List<Double> shares) {
    double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
    return shares.stream().map(s -> s / sum).toList();
  }

  private static double drop(GroupMoments moments, Filling line, Shares now, double[] x) {
    int last = x.length;
    double deviation = Math.sqrt(line.leftOver().get(last, last));
    int[] inPlay = IntStream.range(0, now.values().size()).filter(g -> now.of(g) > 0).toArray();
    double[] shares = IntStream.of(inPlay).mapToDouble(now::of).toArray();
    double[] logs = DoubleStream.of(shares).map(Math::log).toArray();
    double[] centres = new double[inPlay.length];
    for (int g = 0; g < centres.length; g++) {
      centres[g] = line.fill(moments.meanOrZeros(inPlay[g]), x)[last] / deviation;
    }
    double after = 0;
    for (int g = 0; g < centres.length; g++) {
      double centre = centres[g];
      double expected =
          HERMITE.integrate(t -> entropyAfter(logs, centres, centre + Math.sqrt(2) * t));
      after += shares[g] * expected / Math.sqrt(Math.PI);
    }
    return now.entropy() - after;
  }

  /**
   * Entropy of the shares once the measurement has a value: with weights e^w, ln Σ e^w less the
   * mean of w.
   */
  private static double entropyAfter(double[] logShares, double[] centres, double value) {
    double[] w = new double[centres.length];
    double largest = Double.NEGATIVE_INFINITY;
    for (int g = 0; g < w.length; g++) {
      double away = value - centres[g];
      w[g] = logShares[g] - 0.5 * away * away;
      largest = Math.max(largest, w[g]);
    }
    double sum = 0;
    double weighted = 0;
    for (double each : w) {
      double weight = Math.exp(each - largest);
      sum += weight;
      weighted += weight * (each - largest);
    }
    return Math.log(sum) - weighted / sum;
  }
}
