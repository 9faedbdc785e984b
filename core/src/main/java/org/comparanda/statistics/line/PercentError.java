package org.comparanda.statistics.line;

import java.util.Arrays;

/**
 * Per cent prediction errors 100·(observed − predicted)/predicted, in the unit of y.
 *
 * <p>Source: Smith 1984, Am. J. Phys. Anthropol. 64:469-478 (the predicted value is the
 * denominator).
 *
 * @param meanAbsolute mean of their sizes
 * @param mean mean with sign: the bias
 * @param medianAbsolute median of their sizes
 */
public record PercentError(double meanAbsolute, double mean, double medianAbsolute) {
  /**
   * The errors of these predictions, all above zero.
   *
   * <p>Errors: {@link IllegalArgumentException} if there is none or the counts differ.
   */
  public static PercentError of(double[] observed, double[] predicted) {
    if (observed.length == 0 || observed.length != predicted.length) {
      throw new IllegalArgumentException("As many predicted as observed are needed, at least one.");
    }
    double[] sizes = new double[observed.length];
    CompensatedSum absolute = new CompensatedSum();
    CompensatedSum signed = new CompensatedSum();
    for (int i = 0; i < sizes.length; i++) {
      double error = 100 * (observed[i] - predicted[i]) / predicted[i];
      sizes[i] = Math.abs(error);
      absolute.add(sizes[i]);
      signed.add(error);
    }
    Arrays.sort(sizes);
    int half = sizes.length / 2;
    double median = sizes.length % 2 == 1 ? sizes[half] : (sizes[half - 1] + sizes[half]) / 2;
    return new PercentError(absolute.value() / sizes.length, signed.value() / sizes.length, median);
  }
}
