package org.comparanda.statistics.robust;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Squared distance of a row from the mean of its sample in units of the covariance, by all rows and
 * by all but itself.
 *
 * @param classical D² by mean and covariance of all n rows
 * @param classicalP chance of at least that: D²n/(n − 1)² is Beta(p/2, (n − p − 1)/2)
 * @param leftOut D² by mean and covariance of the other m = n − 1 rows
 * @param leftOutP chance of at least that: D²·m(m − p)/(p(m² − 1)) is F on p and m − p
 */
public record RowDistances(double classical, double classicalP, double leftOut, double leftOutP) {
  /** For every row in order; not estimable where n − 1 ≤ p or the measurements repeat. */
  public static Outcome<List<RowDistances>> of(List<double[]> rows) {
    int n = rows.size();
    int p = n == 0 ? 0 : rows.get(0).length;
    if (p == 0 || n - 1 <= p) {
      return tooFew(n, p);
    }
    List<RowDistances> distances = new ArrayList<>();
    var all = Concentration.from(rows, IntStream.range(0, n).toArray());
    for (int i = 0; i < n; i++) {
      int here = i;
      var others = Concentration.from(rows, IntStream.range(0, n).filter(j -> j != here).toArray());
      if (all.isEmpty() || others.isEmpty()) {
        return tooFew(n, p);
      }
      double d = all.get().squaredDistances(rows.subList(i, i + 1))[0];
      double out = others.get().squaredDistances(rows.subList(i, i + 1))[0];
      double m = n - 1;
      double beta = d * n / ((n - 1.0) * (n - 1));
      distances.add(
          new RowDistances(
              d,
              Distributions.betaLowerTail(1 - beta, 0.5 * (n - p - 1), 0.5 * p),
              out,
              Distributions.fUpperTail(out * m * (m - p) / (p * (m * m - 1)), p, m - p)));
    }
    return Outcome.of(distances);
  }

  private static Outcome<List<RowDistances>> tooFew(int n, int p) {
    return Outcome.none(
        "%d rows are too few for distances in %d measurements, or these repeat one another."
            .formatted(n, p),
        "Add animals, or leave measurements out.");
  }
}
