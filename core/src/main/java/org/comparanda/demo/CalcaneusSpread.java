package org.comparanda.demo;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.demo.FaultySheet.Row;

/**
 * Spread of the calcaneus within one taxon, without the animal in question and those that are
 * spoilt already: means and covariance of the logs of two measurements. With two measurements the
 * tail of the F distribution is closed, so a chance can be turned into a distance without tables.
 */
final class CalcaneusSpread {
  static final String LENGTH = "GL [mm]";
  static final String BREADTH = "GB [mm]";
  private static final int ENOUGH = 25;

  private final int n;
  private final double meanLength;
  private final double meanBreadth;
  private final double varLength;
  private final double varBreadth;
  private final double covariance;

  private CalcaneusSpread(List<double[]> logs) {
    n = logs.size();
    meanLength = logs.stream().mapToDouble(v -> v[0]).sum() / n;
    meanBreadth = logs.stream().mapToDouble(v -> v[1]).sum() / n;
    double ll = 0;
    double bb = 0;
    double lb = 0;
    for (double[] v : logs) {
      ll += (v[0] - meanLength) * (v[0] - meanLength);
      bb += (v[1] - meanBreadth) * (v[1] - meanBreadth);
      lb += (v[0] - meanLength) * (v[1] - meanBreadth);
    }
    varLength = ll / (n - 1);
    varBreadth = bb / (n - 1);
    covariance = lb / (n - 1);
  }

  /** Whether a bone is a calcaneus with both readings, of a taxon with enough animals. */
  static boolean fits(FaultySheet sheet, Row row) {
    return isMeasured(row) && others(sheet, row).size() >= ENOUGH;
  }

  /** The spread of the bone's taxon without the bone's animal; one bone per animal. */
  static CalcaneusSpread around(FaultySheet sheet, Row row) {
    return new CalcaneusSpread(others(sheet, row));
  }

  /**
   * The breadth, mm, at which a bone of this length lies so far out that a true member lies further
   * only with this chance. D² = f·2(n+1)(n−1)/(n(n−2)), where the tail of F(2, n−2) at f is (1 +
   * 2f/(n−2))^(−(n−2)/2).
   */
  double breadthAtChance(Row row, double chance) {
    double f = (StrictMath.pow(chance, -2.0 / (n - 2)) - 1) * (n - 2) / 2;
    double distance = f * 2 * (n + 1) * (n - 1) / ((double) n * (n - 2));
    double length = StrictMath.log(row.number(LENGTH)) - meanLength;
    double left = distance - length * length / varLength;
    double conditional = varBreadth - covariance * covariance / varLength;
    double expected = meanBreadth + covariance / varLength * length;
    return StrictMath.exp(expected + StrictMath.sqrt(left * conditional));
  }

  private static List<double[]> others(FaultySheet sheet, Row row) {
    List<double[]> logs = new ArrayList<>();
    String last = row.get("animal");
    for (Row other : sheet.all()) {
      if (isMeasured(other)
          && sheet.untouched(other)
          && other.get("taxon").equals(row.get("taxon"))
          && !other.get("animal").equals(row.get("animal"))
          && !other.get("animal").equals(last)) {
        last = other.get("animal");
        logs.add(
            new double[] {
              StrictMath.log(other.number(LENGTH)), StrictMath.log(other.number(BREADTH))
            });
      }
    }
    return logs;
  }

  private static boolean isMeasured(Row row) {
    return row.get("element").equals("calcaneus") && row.has(LENGTH) && row.has(BREADTH);
  }
}
