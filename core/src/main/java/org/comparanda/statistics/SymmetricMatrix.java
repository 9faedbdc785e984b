package org.comparanda.statistics;

import java.util.Arrays;

/**
 * A symmetric matrix of p rows and columns that never changes: covariances, sums of products.
 *
 * <p>Rows and columns count from 0. Errors: {@link IllegalArgumentException} if sizes differ or a
 * given table is not symmetric to the last digit.
 */
public final class SymmetricMatrix {
  private final int size;
  private final double[] cells;

  private SymmetricMatrix(int size, double[] cells) {
    this.size = size;
    this.cells = cells;
  }

  /** The matrix with the given rows. */
  public static SymmetricMatrix of(double[]... rows) {
    int p = rows.length;
    double[] cells = new double[p * p];
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        if (rows[i].length != p || rows[i][j] != rows[j][i]) {
          throw new IllegalArgumentException("Not symmetric at row " + i + ", column " + j);
        }
        cells[i * p + j] = rows[i][j];
      }
    }
    return new SymmetricMatrix(p, cells);
  }

  /** All zeros. */
  public static SymmetricMatrix zero(int size) {
    return new SymmetricMatrix(size, new double[size * size]);
  }

  /** Sum of v vᵀ over the vectors, in their order; zero without vectors. */
  public static SymmetricMatrix sumOfProducts(int size, Iterable<double[]> vectors) {
    double[] cells = new double[size * size];
    for (double[] v : vectors) {
      for (int i = 0; i < size; i++) {
        for (int j = 0; j <= i; j++) {
          cells[i * size + j] += v[i] * v[j];
        }
      }
    }
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        cells[j * size + i] = cells[i * size + j];
      }
    }
    return new SymmetricMatrix(size, cells);
  }

  /** Number of rows, which is that of columns. */
  public int size() {
    return size;
  }

  public double get(int row, int column) {
    return cells[row * size + column];
  }

  /** The rows and columns named, in that order. */
  public SymmetricMatrix forColumns(int... columns) {
    int p = columns.length;
    double[] part = new double[p * p];
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        part[i * p + j] = get(columns[i], columns[j]);
      }
    }
    return new SymmetricMatrix(p, part);
  }

  public SymmetricMatrix plus(SymmetricMatrix other) {
    if (other.size != size) {
      throw new IllegalArgumentException("Sizes differ: " + size + " and " + other.size);
    }
    double[] sum = cells.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += other.cells[i];
    }
    return new SymmetricMatrix(size, sum);
  }

  /** This plus {@code factor} times v vᵀ. */
  public SymmetricMatrix plusProduct(double factor, double[] v) {
    double[] sum = cells.clone();
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        sum[i * size + j] += factor * (v[i] * v[j]);
      }
    }
    return new SymmetricMatrix(size, sum);
  }

  public SymmetricMatrix times(double factor) {
    double[] product = cells.clone();
    for (int i = 0; i < product.length; i++) {
      product[i] *= factor;
    }
    return new SymmetricMatrix(size, product);
  }

  /** Row i and column i times the i-th factor: D M D. */
  public SymmetricMatrix scaled(double[] factors) {
    double[] product = cells.clone();
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        product[i * size + j] *= factors[i] * factors[j];
      }
    }
    return new SymmetricMatrix(size, product);
  }

  /** The same diagonal, zeros beside it. */
  public SymmetricMatrix diagonal() {
    double[] only = new double[size * size];
    for (int i = 0; i < size; i++) {
      only[i * size + i] = get(i, i);
    }
    return new SymmetricMatrix(size, only);
  }

  /** Sum of the diagonal. */
  public double trace() {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += get(i, i);
    }
    return sum;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SymmetricMatrix that && Arrays.equals(cells, that.cells);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(cells);
  }

  @Override
  public String toString() {
    return size + " × " + size + " " + Arrays.toString(cells);
  }
}
