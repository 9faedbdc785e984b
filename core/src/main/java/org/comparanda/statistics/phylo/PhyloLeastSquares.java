package org.comparanda.statistics.phylo;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Design;

/**
 * Generalised least squares between taxa that share ancestors. λ multiplies the covariances, not
 * the variances: 1 is Brownian motion, 0 no shared ancestry.
 *
 * <p>Source: Pagel 1999, Nature 401:877-884; Freckleton, Harvey and Pagel 2002, Am. Nat.
 * 160:712-726 (from memory). λ is chosen by maximum likelihood on [0, 1]; standard errors stand on
 * n minus the number of coefficients.
 */
public final class PhyloLeastSquares {
  private static final int GRID = 40;

  private final OptionalDouble lambda;

  private PhyloLeastSquares(OptionalDouble lambda) {
    this.lambda = lambda;
  }

  /** λ by maximum likelihood. */
  public static PhyloLeastSquares withDefaults() {
    return new PhyloLeastSquares(OptionalDouble.empty());
  }

  /** Brownian motion: λ = 1. */
  public static PhyloLeastSquares brownian() {
    return new PhyloLeastSquares(OptionalDouble.of(1));
  }

  /** λ given, between 0 and 1. Errors: {@link IllegalArgumentException} if it is not. */
  public PhyloLeastSquares withLambda(double given) {
    if (!(given >= 0 && given <= 1)) {
      throw new IllegalArgumentException("λ lies between 0 and 1, not at " + given);
    }
    return new PhyloLeastSquares(OptionalDouble.of(given));
  }

  /** The line through these taxon means, rows in the order of the tips. */
  public Outcome<PhyloFit> fit(TipCovariance tips, Design means) {
    if (means.rows() != tips.tips().size()) {
      throw new IllegalArgumentException(
          means.rows() + " means for " + tips.tips().size() + " tips");
    }
    if (lambda.isPresent()) {
      return PhyloFit.of(tips, means, lambda.getAsDouble());
    }
    Outcome<PhyloFit> independent = PhyloFit.of(tips, means, 0);
    return independent.then(none -> best(tips, means, none));
  }

  private static Outcome<PhyloFit> best(TipCovariance tips, Design means, PhyloFit independent) {
    PhyloFit best = independent;
    for (int i = 1; i <= GRID; i++) {
      best = better(best, tips, means, (double) i / GRID);
    }
    double step = 1.0 / GRID;
    double low = Math.max(0, best.lambda() - step);
    double high = Math.min(1, best.lambda() + step);
    double found =
        new BrentOptimizer(1e-10, 1e-14)
            .optimize(
                new MaxEval(1000),
                GoalType.MAXIMIZE,
                new SearchInterval(low, high, Math.min(high, Math.max(low, best.lambda()))),
                new UnivariateObjectiveFunction(
                    l ->
                        PhyloFit.of(tips, means, l)
                            .value()
                            .map(PhyloFit::logLikelihood)
                            .orElse(-Double.MAX_VALUE)))
            .getPoint();
    return Outcome.of(better(best, tips, means, found));
  }

  private static PhyloFit better(PhyloFit best, TipCovariance tips, Design means, double lambda) {
    Optional<PhyloFit> other = PhyloFit.of(tips, means, lambda).value();
    return other.isPresent() && other.get().logLikelihood() > best.logLikelihood()
        ? other.get()
        : best;
  }
}
