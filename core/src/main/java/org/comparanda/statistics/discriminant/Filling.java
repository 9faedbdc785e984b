package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/** What the measured columns let expect of the missing ones, for one pattern of holes. */
final class Filling {
  private final int[] measured;
  private final int[] missing;
  private final List<double[]> slopes;
  private final SymmetricMatrix leftOver;

  private Filling(int[] measured, int[] missing, List<double[]> slopes, SymmetricMatrix leftOver) {
    this.measured = measured;
    this.missing = missing;
    this.slopes = slopes;
    this.leftOver = leftOver;
  }

  static Outcome<Filling> of(SymmetricMatrix covariance, int... measured) {
    int p = covariance.size();
    int[] missing =
        IntStream.range(0, p).filter(j -> IntStream.of(measured).noneMatch(m -> m == j)).toArray();
    return Cholesky.of(covariance.forColumns(measured))
        .then(
            known -> {
              List<double[]> slopes = new ArrayList<>();
              double[][] left = new double[p][p];
              for (int a : missing) {
                double[] along = across(covariance, a, measured);
                double[] slope = known.solve(along);
                slopes.add(slope);
                for (int b : missing) {
                  double explained = 0;
                  double[] other = across(covariance, b, measured);
                  for (int j = 0; j < slope.length; j++) {
                    explained += slope[j] * other[j];
                  }
                  if (b <= a) {
                    left[a][b] = covariance.get(a, b) - explained;
                    left[b][a] = left[a][b];
                  }
                }
              }
              return Outcome.of(new Filling(measured, missing, slopes, SymmetricMatrix.of(left)));
            });
  }

  private static double[] across(SymmetricMatrix covariance, int row, int... columns) {
    double[] part = new double[columns.length];
    for (int j = 0; j < part.length; j++) {
      part[j] = covariance.get(row, columns[j]);
    }
    return part;
  }

  /** The row with its holes filled by what its measured values let expect. */
  double[] fill(double[] mean, double[] values) {
    double[] filled = mean.clone();
    double[] away = new double[measured.length];
    for (int j = 0; j < away.length; j++) {
      away[j] = values[j] - mean[measured[j]];
      filled[measured[j]] = values[j];
    }
    for (int m = 0; m < missing.length; m++) {
      for (int j = 0; j < away.length; j++) {
        filled[missing[m]] += slopes.get(m)[j] * away[j];
      }
    }
    return filled;
  }

  /** The scatter that filled rows have where their measured values have this one. */
  SymmetricMatrix filledScatter(SymmetricMatrix measuredScatter) {
    int p = leftOver.size();
    int q = measured.length;
    double[][] loads = new double[p][q];
    for (int j = 0; j < q; j++) {
      loads[measured[j]][j] = 1;
      for (int m = 0; m < missing.length; m++) {
        loads[missing[m]][j] = slopes.get(m)[j];
      }
    }
    double[][] half = new double[p][q];
    for (int i = 0; i < p; i++) {
      for (int a = 0; a < q; a++) {
        for (int b = 0; b < q && loads[i][a] != 0; b++) {
          half[i][b] += loads[i][a] * measuredScatter.get(a, b);
        }
      }
    }
    double[][] filled = new double[p][p];
    for (int i = 0; i < p; i++) {
      for (int j = 0; j <= i; j++) {
        for (int b = 0; b < q; b++) {
          filled[i][j] += half[i][b] * loads[j][b];
        }
        filled[j][i] = filled[i][j];
      }
    }
    return SymmetricMatrix.of(filled);
  }

  /** Covariance of the missing columns given the measured ones, zero elsewhere. */
  SymmetricMatrix leftOver() {
    return leftOver;
  }
}
