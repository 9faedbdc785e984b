package org.comparanda.statistics.discriminant;

/**
 * The linear discriminant for small samples: share ∝ prior · (1 + 1/n_g)^(−p/2) · (1 + n_g D² /
 * ((n_g + 1)(n − k)))^(−(n − k + 1)/2).
 *
 * <p>The unknown mean and covariance are averaged over instead of plugged in, so that few animals
 * give less sure shares. Source: Geisser 1964, J. R. Stat. Soc. B 26:69–76; Aitchison and Dunsmore
 * 1975.
 */
public record Predictive() implements PlainSpread {
  @Override
  public String name() {
    return "predictive";
  }

  @Override
  public LogDensity density(int columns, int degreesOfFreedom) {
    double p = columns;
    double df = degreesOfFreedom;
    return (n, squared) ->
        -0.5 * p * Math.log1p(1 / n) - 0.5 * (df + 1) * Math.log1p(n * squared / ((n + 1) * df));
  }
}
