package org.comparanda.statistics.line;

import java.util.function.DoubleUnaryOperator;

/**
 * Factors that move an estimate back from a log scale. The plain antilog of a line is the median of
 * y; the factors turn it towards the mean. Limits are never multiplied.
 *
 * @param naive always 1: the median, as it is
 * @param lognormal exp(s²/2), s on natural logs (Baskerville 1972, Can. J. For. Res. 2:49-53)
 * @param smearing mean antilog of the residuals (Duan 1983, J. Am. Stat. Assoc. 78:605-610)
 * @param ratio mean y over mean antilog of the fit (Snowdon 1991, Can. J. For. Res. 21:720-724)
 */
public record BackTransform(double naive, double lognormal, double smearing, double ratio) {
  /**
   * The factors of a line.
   *
   * @param y the response in its own unit
   * @param fitted the line on the scale of the fit
   * @param residualStandardError s on the scale of the fit
   * @param antilog from the scale of the fit to y's own unit
   * @param lnOfBase natural log of the base of the logs
   */
  public static BackTransform of(
      double[] y,
      double[] fitted,
      double residualStandardError,
      DoubleUnaryOperator antilog,
      double lnOfBase) {
    CompensatedSum observed = new CompensatedSum();
    CompensatedSum predicted = new CompensatedSum();
    CompensatedSum ratios = new CompensatedSum();
    for (int i = 0; i < y.length; i++) {
      double back = antilog.applyAsDouble(fitted[i]);
      observed.add(y[i]);
      predicted.add(back);
      ratios.add(y[i] / back);
    }
    double s = residualStandardError * lnOfBase;
    return new BackTransform(
        1, Math.exp(s * s / 2), ratios.value() / y.length, observed.value() / predicted.value());
  }
}
