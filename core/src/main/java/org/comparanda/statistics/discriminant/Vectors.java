package org.comparanda.statistics.discriminant;

/** Small arithmetic on rows of numbers. */
final class Vectors {
  private Vectors() {}

  /** A copy, if it has the right length and every value is finite. */
  static double[] checked(int columns, double[] values) {
    if (values.length != columns) {
      throw new IllegalArgumentException(columns + " values needed, got " + values.length);
    }
    for (double value : values) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("Not a finite value: " + value);
      }
    }
    return values.clone();
  }

  static double[] chosen(double[] values, int... columns) {
    double[] part = new double[columns.length];
    for (int j = 0; j < columns.length; j++) {
      part[j] = values[columns[j]];
    }
    return part;
  }

  static double[] minus(double[] a, double[] b) {
    double[] difference = new double[a.length];
    for (int j = 0; j < a.length; j++) {
      difference[j] = a[j] - b[j];
    }
    return difference;
  }

  /** a + factor · b. */
  static double[] plus(double[] a, double factor, double[] b) {
    double[] sum = new double[a.length];
    for (int j = 0; j < a.length; j++) {
      sum[j] = a[j] + factor * b[j];
    }
    return sum;
  }

  /** Each value of a divided by its own of b. */
  static double[] quotient(double[] a, double[] b) {
    double[] quotient = new double[a.length];
    for (int j = 0; j < a.length; j++) {
      quotient[j] = a[j] / b[j];
    }
    return quotient;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int j = 0; j < a.length; j++) {
      sum += a[j] * b[j];
    }
    return sum;
  }

  static double squaredDistance(double[] a, double[] b) {
    double sum = 0;
    for (int j = 0; j < a.length; j++) {
      double d = a[j] - b[j];
      sum += d * d;
    }
    return sum;
  }

  static double[] mean(int columns, Iterable<double[]> vectors) {
    double[] sum = new double[columns];
    int n = 0;
    for (double[] v : vectors) {
      n++;
      for (int j = 0; j < columns; j++) {
        sum[j] += v[j];
      }
    }
    for (int j = 0; j < columns && n > 0; j++) {
      sum[j] /= n;
    }
    return sum;
  }
}
