package org.comparanda.statistics.phylo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Coefficient;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.LeastSquares;
import org.comparanda.statistics.line.LeastSquaresFit;
import org.comparanda.statistics.line.LinePrediction;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;

/**
 * A line between taxa on a tree. With V the covariance of the tips and L its Cholesky factor, it is
 * the ordinary line through L⁻¹y and L⁻¹X.
 */
public final class PhyloFit {
  /** Below this part of its variance, nothing of a tip is its own. */
  private static final double SINGULAR = 1e-12;

  private final TipCovariance tips;
  private final double lambda;
  private final CholeskyFactor factor;
  private final Design means;
  private final Design white;
  private final LeastSquaresFit fit;

  private PhyloFit(
      TipCovariance tips,
      double lambda,
      CholeskyFactor factor,
      Design means,
      Design white,
      LeastSquaresFit fit) {
    this.tips = tips;
    this.lambda = lambda;
    this.factor = factor;
    this.means = means;
    this.white = white;
    this.fit = fit;
  }

  static Outcome<PhyloFit> of(TipCovariance tips, Design means, double lambda) {
    int n = means.rows();
    DMatrixRMaj v = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        v.set(i, j, tips.shared(i, j) * (i == j ? 1 : lambda));
      }
    }
    CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(n, true);
    Optional<CholeskyFactor> found =
        cholesky.decompose(v.copy())
            ? Optional.of(new CholeskyFactor(cholesky.getT(null)))
            : Optional.empty();
    if (found.isEmpty() || found.get().smallestPivot(v) < SINGULAR) {
      return Outcome.none(
          "Two tips of the tree lie at no distance from each other.",
          "Join them to one taxon, or give their branches a length.");
    }
    CholeskyFactor factor = found.get();
    List<double[]> columns = new ArrayList<>();
    columns.add(factor.whiten(IntStream.range(0, n).mapToDouble(i -> 1).toArray()));
    for (int j = 0; j < means.predictors(); j++) {
      columns.add(factor.whiten(means.column(j)));
    }
    double[] y = factor.whiten(means.response());
    List<List<Double>> x = new ArrayList<>();
    List<Double> response = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int row = i;
      x.add(columns.stream().map(c -> c[row]).toList());
      response.add(y[i]);
    }
    Design white = Design.of(x, response);
    return LeastSquares.withIntercept()
        .fit(means)
        .then(plain -> LeastSquares.throughOrigin().fit(white))
        .then(fit -> Outcome.of(new PhyloFit(tips, lambda, factor, means, white, fit)));
  }

  /** λ of the fit. */
  public double lambda() {
    return lambda;
  }

  /** Taxa on the line. */
  public int n() {
    return means.rows();
  }

  /** Taxa minus coefficients. */
  public int degreesOfFreedom() {
    return fit.degreesOfFreedom();
  }

  /** The intercept. */
  public Coefficient intercept() {
    return fit.slope(0);
  }

  /** The slope of predictor j. */
  public Coefficient slope(int j) {
    return fit.slope(j + 1);
  }

  /** √(rᵀV⁻¹r/(n − k)): per unit of branch length, not on the scale of y. */
  public double sigma() {
    return fit.residualStandardError();
  }

  /** Largest log-likelihood of this λ (divisor n). */
  public double logLikelihood() {
    int n = means.rows();
    double variance = fit.residualSumOfSquares() / n;
    return -0.5 * (n * Math.log(2 * Math.PI * variance) + factor.logDeterminant() + n);
  }

  /** 1 − rᵀV⁻¹r over the same of a line without slope. */
  public Outcome<Double> rSquared() {
    Design flat =
        Design.of(
            IntStream.range(0, white.rows()).mapToDouble(i -> white.x(i, 0)).toArray(),
            white.response());
    return LeastSquares.throughOrigin()
        .fit(flat)
        .then(
            mean ->
                mean.residualSumOfSquares() > 0
                    ? Outcome.of(1 - fit.residualSumOfSquares() / mean.residualSumOfSquares())
                    : Outcome.none(
                        "All values of y are equal.", "A line needs animals of different size."));
  }

  /** The line from the root. */
  public double at(List<Double> x) {
    return fit.at(withOne(x));
  }

  /** The line from the root, with the variance of the deepest tip: for a taxon not on the tree. */
  public LinePrediction predict(List<Double> x, double level) {
    double s2 = sigma() * sigma();
    double error = Math.sqrt(s2 * fit.leverage(withOne(x)));
    return LinePrediction.of(at(x), error, s2 * tips.deepest(), degreesOfFreedom(), level);
  }

  /**
   * The conditional mean at a place of the tree that has no value of its own: x₀ᵀβ + cᵀV⁻¹(y − Xβ),
   * with variance σ²(v₀ − cᵀV⁻¹c + dᵀ(XᵀV⁻¹X)⁻¹d), d = x₀ − XᵀV⁻¹c.
   *
   * <p>Source: Garland and Ives 2000, Am. Nat. 155:346-364 (from memory).
   */
  public LinePrediction predict(TipCovariance.Place place, List<Double> x, double level) {
    double[] c = place.covariances().stream().mapToDouble(v -> lambda * v).toArray();
    double[] whiteC = factor.whiten(c);
    double mean = at(x);
    double variance = place.variance();
    List<Double> rest = new ArrayList<>(withOne(x));
    for (int i = 0; i < whiteC.length; i++) {
      mean += whiteC[i] * (white.y(i) - fit.at(white.x(i)));
      variance -= whiteC[i] * whiteC[i];
      for (int j = 0; j < rest.size(); j++) {
        rest.set(j, rest.get(j) - whiteC[i] * white.x(i, j));
      }
    }
    double s2 = sigma() * sigma();
    double error = Math.sqrt(s2 * fit.leverage(rest));
    return LinePrediction.of(mean, error, s2 * Math.max(0, variance), degreesOfFreedom(), level);
  }

  /**
   * A new animal of the taxon at tip i: the tree's slope through that taxon's mean. The standard
   * error of the mean counts the slope and the taxon's mean.
   *
   * @param withinVariance variance of animals within their taxon around the line
   * @param animals animals behind that taxon's mean
   */
  public LinePrediction predictWithin(
      int i, int animals, double withinVariance, List<Double> x, double level) {
    double mean = means.y(i);
    List<Double> step = new ArrayList<>(List.of(0.0));
    for (int j = 0; j < x.size(); j++) {
      double d = x.get(j) - means.x(i, j);
      step.add(d);
      mean += slope(j).value() * d;
    }
    double variance = sigma() * sigma() * fit.leverage(step) + withinVariance / animals;
    return LinePrediction.of(mean, Math.sqrt(variance), withinVariance, degreesOfFreedom(), level);
  }

  /** What the other taxa, with the same λ, say of the taxon at tip i. */
  public double heldOut(int i) {
    double[] unit = new double[means.rows()];
    unit[i] = 1;
    double[] w = factor.whiten(unit);
    double own = 0;
    double residual = 0;
    List<Double> xw = new ArrayList<>(java.util.Collections.nCopies(white.predictors(), 0.0));
    for (int r = 0; r < w.length; r++) {
      own += w[r] * w[r];
      residual += w[r] * (white.y(r) - fit.at(white.x(r)));
      for (int j = 0; j < xw.size(); j++) {
        xw.set(j, xw.get(j) + w[r] * white.x(r, j));
      }
    }
    return means.y(i) - residual / (own - fit.leverage(xw));
  }

  private static List<Double> withOne(List<Double> x) {
    List<Double> row = new ArrayList<>(List.of(1.0));
    row.addAll(x);
    return row;
  }
}
