package org.comparanda.statistics.agreement;

import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Outcome;

/**
 * Readings of the same subjects taken several times, or by several people.
 *
 * <p>Shape: n subjects (rows) × k readings (columns), complete, n ≥ 2, k ≥ 2. Unit: any, the same
 * for all. Sums run in the order of the rows. Sources: TEM and %TEM: Ulijaszek & Kerr 1999;
 * reliability: Goto & Mascie-Taylor 2007; intraclass correlations: Shrout & Fleiss 1979; limits of
 * agreement: Bland & Altman 1986.
 */
public final class RepeatedReadings {
  private final double[][] values;
  private final int k;

  private RepeatedReadings(double[][] values) {
    this.values = values;
    this.k = values[0].length;
  }

  /** The readings, or why they can't be compared. */
  public static Outcome<RepeatedReadings> of(double[][] rows) {
    if (rows.length < 2 || rows[0].length < 2) {
      return Outcome.none(
          "At least two subjects with two readings each are needed.",
          "Take every reading twice, on several bones.");
    }
    double[][] copy = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      if (rows[i].length != rows[0].length) {
        return Outcome.none(
            "The subjects have different numbers of readings.", "Leave out the incomplete ones.");
      }
      copy[i] = rows[i].clone();
    }
    return Outcome.of(new RepeatedReadings(copy));
  }

  /** Number of subjects. */
  public int subjects() {
    return values.length;
  }

  /** Mean of all readings. */
  public double mean() {
    double sum = 0;
    for (double[] row : values) {
      for (double value : row) {
        sum += value;
      }
    }
    return sum / (values.length * (double) k);
  }

  /**
   * Technical error of measurement: the root of the mean square within subjects, for two readings
   * √(Σd²/2n).
   */
  public double tem() {
    return Math.sqrt(meanSquareWithin());
  }

  /** TEM in per cent of the mean of all readings. */
  public Outcome<Double> relativeTem() {
    double mean = mean();
    return mean > 0
        ? Outcome.of(100 * tem() / mean)
        : Outcome.none("The mean is not above zero.", "Give the readings in a unit with a zero.");
  }

  /** Reliability 1 − TEM²/SD², SD of all readings (divisor nk − 1). */
  public Outcome<Double> reliability() {
    double mean = mean();
    double squares = 0;
    for (double[] row : values) {
      for (double value : row) {
        squares += (value - mean) * (value - mean);
      }
    }
    double variance = squares / (values.length * (double) k - 1);
    return variance > 0 ? Outcome.of(1 - meanSquareWithin() / variance) : allEqual();
  }

  /** ICC(1,1): the readings of a subject are interchangeable takes. */
  public Outcome<Double> iccOfTakes() {
    double between = meanSquareBetween();
    double within = meanSquareWithin();
    double total = between + (k - 1) * within;
    return total > 0 ? Outcome.of((between - within) / total) : allEqual();
  }

  /** ICC(2,1): the columns are people drawn from many, whose own bias counts. */
  public Outcome<Double> iccOfPersons() {
    int n = values.length;
    double between = meanSquareBetween();
    double persons = meanSquareOfColumns();
    double error = (meanSquareWithin() * n * (k - 1) - persons * (k - 1)) / ((n - 1.0) * (k - 1));
    double total = between + (k - 1) * error + k * (persons - error) / n;
    return total > 0 ? Outcome.of((between - error) / total) : allEqual();
  }

  /** Mean of first minus second reading; only for two columns. */
  public Outcome<Double> bias() {
    return twoColumns().then(ok -> Outcome.of(columnMean(0) - columnMean(1)));
  }

  /** Bias ± 1.96 standard deviations of the differences; only for two columns. */
  public Outcome<Interval> limitsOfAgreement() {
    return twoColumns().then(ok -> Outcome.of(limits()));
  }

  private Interval limits() {
    double bias = columnMean(0) - columnMean(1);
    double squares = 0;
    for (double[] row : values) {
      double difference = row[0] - row[1] - bias;
      squares += difference * difference;
    }
    double sd = Math.sqrt(squares / (values.length - 1));
    return new Interval(bias - 1.96 * sd, bias + 1.96 * sd, 0.95);
  }

  private Outcome<Integer> twoColumns() {
    return k == 2
        ? Outcome.of(k)
        : Outcome.none(
            "Bias and limits of agreement compare two columns, and there are " + k + ".",
            "Pick two of them.");
  }

  private static <T> Outcome<T> allEqual() {
    return Outcome.none(
        "All readings are the same.", "Measure bones of different sizes to see the error.");
  }

  private double meanSquareWithin() {
    double squares = 0;
    for (double[] row : values) {
      double mean = rowMean(row);
      for (double value : row) {
        squares += (value - mean) * (value - mean);
      }
    }
    return squares / (values.length * (k - 1.0));
  }

  private double meanSquareBetween() {
    double mean = mean();
    double squares = 0;
    for (double[] row : values) {
      double off = rowMean(row) - mean;
      squares += off * off;
    }
    return k * squares / (values.length - 1);
  }

  private double meanSquareOfColumns() {
    double mean = mean();
    double squares = 0;
    for (int j = 0; j < k; j++) {
      double off = columnMean(j) - mean;
      squares += off * off;
    }
    return values.length * squares / (k - 1);
  }

  private double rowMean(double[] row) {
    double sum = 0;
    for (double value : row) {
      sum += value;
    }
    return sum / k;
  }

  private double columnMean(int column) {
    double sum = 0;
    for (double[] row : values) {
      sum += row[column];
    }
    return sum / values.length;
  }
}
