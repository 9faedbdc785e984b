package org.comparanda.statistics.discriminant;

import java.util.List;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * How far to pull a sample covariance S (divisor n) towards a multiple of the identity, and the
 * result (1 − s) S + s · (trace S / p) · I.
 *
 * <p>Source: Ledoit and Wolf 2004, J. Multivar. Anal. 88:365–411.
 *
 * @param intensity s, 0 to 1
 */
record LedoitWolf(double intensity, SymmetricMatrix covariance) {
  /** From rows that are centred already; at least one row and one column. */
  static LedoitWolf ofCentred(int p, List<double[]> rows) {
    double n = rows.size();
    SymmetricMatrix s = SymmetricMatrix.sumOfProducts(p, rows).times(1 / n);
    double level = s.trace() / p;
    double squares = 0;
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        squares += s.get(i, j) * s.get(i, j);
      }
    }
    double fourths = 0;
    for (double[] row : rows) {
      double length = 0;
      for (double value : row) {
        length += value * value;
      }
      fourths += length * length;
    }
    double noise = (fourths / n - squares) / n;
    double distance = squares - p * level * level;
    double intensity = p == 1 || noise <= 0 ? 0 : Math.min(noise, distance) / distance;
    SymmetricMatrix pulled = s.times(1 - intensity);
    for (int j = 0; j < p; j++) {
      double[] axis = new double[p];
      axis[j] = 1;
      pulled = pulled.plusProduct(intensity * level, axis);
    }
    return new LedoitWolf(intensity, pulled);
  }
}
