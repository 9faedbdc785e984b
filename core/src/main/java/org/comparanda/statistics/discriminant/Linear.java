package org.comparanda.statistics.discriminant;

/**
 * Linear discriminant with the pooled covariance W: share ∝ prior · exp(−D²/2), the estimates
 * plugged in as if they were known. Source: Fisher 1936, Ann. Eugenics 7:179–188; McLachlan 1992.
 */
public record Linear() implements PlainSpread {
  @Override
  public String name() {
    return "linear";
  }

  @Override
  public LogDensity density(int columns, int degreesOfFreedom) {
    return LogDensity.normal();
  }
}
