package org.comparanda.statistics.phylo;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.LeastSquares;
import org.comparanda.statistics.line.LeastSquaresFit;
import org.junit.jupiter.api.Test;

/** 1e-8 relative: the outside values carry 17 digits, their matrices are inverted. */
class PhyloOutsideTest {
  private static final double RELATIVE = 1e-8;

  @Test
  void linesOnTreesAgreeWithR() {
    var check =
        OutsideCheck.named(
            "phylo-pgls",
            "R 4.2.2, ape 5.7, nlme 3.1.162 gls and matrix formula; expected/h_pgls.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/h_pgls.csv").rows()) {
      if (!row.text("model").startsWith("pgls")) {
        continue; // contrasts: below; a star tree: the ordinary line
      }
      OutsideTree set = OutsideTree.named(row.text("set"));
      String at = row.text("set") + " " + row.text("model") + " ";
      PhyloFit fit =
          PhyloLeastSquares.withDefaults()
              .withLambda(row.number("lambda"))
              .fit(set.covariance(), set.means())
              .value()
              .orElseThrow();
      check.exact(at + "n", row.count("n"), fit.n());
      check.relative(at + "slope", row.number("slope"), fit.slope(0).value(), RELATIVE);
      check.relative(at + "se", row.number("se_slope"), fit.slope(0).standardError(), RELATIVE);
      check.relative(at + "intercept", row.number("intercept"), fit.intercept().value(), RELATIVE);
      check.relative(
          at + "se intercept",
          row.number("se_intercept"),
          fit.intercept().standardError(),
          RELATIVE);
      check.relative(at + "p", row.number("p_slope"), fit.slope(0).p(), RELATIVE);
      check.relative(
          at + "lo", row.number("slope_lo95"), fit.slope(0).interval(0.95).lower(), RELATIVE);
      check.relative(
          at + "hi", row.number("slope_hi95"), fit.slope(0).interval(0.95).upper(), RELATIVE);
      if (row.has("sigma")) {
        check.relative(at + "sigma", row.number("sigma"), fit.sigma(), RELATIVE);
      }
      check.absolute(at + "log-likelihood", row.number("loglik"), fit.logLikelihood(), 1e-8);
    }
  }

  @Test
  void lambdaByLikelihoodAgreesWithR() {
    var check =
        OutsideCheck.named("phylo-lambda", "R 4.2.2, own likelihood; expected/h_lambda.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/h_lambda.csv").rows()) {
      OutsideTree set = OutsideTree.named(row.text("set"));
      PhyloFit fit =
          PhyloLeastSquares.withDefaults().fit(set.covariance(), set.means()).value().orElseThrow();
      // λ to 1e-4: the top of a likelihood is flat.
      check.absolute(
          row.text("set") + " lambda", row.number("lambda_regression_ml"), fit.lambda(), 1e-4);
      check.absolute(
          row.text("set") + " log-likelihood", row.number("loglik"), fit.logLikelihood(), 1e-8);
      PhyloFit none =
          PhyloLeastSquares.withDefaults()
              .withLambda(0)
              .fit(set.covariance(), set.means())
              .value()
              .orElseThrow();
      check.absolute(
          row.text("set") + " log-likelihood at 0",
          row.number("loglik_lambda0"),
          none.logLikelihood(),
          1e-8);
    }
  }

  @Test
  void contrastsAgreeWithR() {
    var check =
        OutsideCheck.named("phylo-contrasts", "R 4.2.2, ape 5.7 pic(); expected/h_contrasts.csv");
    for (OutsideTree set : OutsideTree.values()) {
      Map<Set<String>, IndependentContrasts.Contrast> x = contrasts(set, set.x());
      Map<Set<String>, IndependentContrasts.Contrast> y = contrasts(set, set.y());
      Set<Set<String>> forks = forks(set.tree().root());
      int compared = 0;
      for (OutsideTable.Row row :
          OutsideTable.read("expected/h_contrasts.csv")
              .where(r -> r.text("set").equalsIgnoreCase(set.name()))
              .rows()) {
        Set<String> clade = Set.copyOf(Arrays.asList(row.text("clade").split(";", -1)));
        if (!forks.contains(clade)) {
          continue; // inside a branching of more than two the order is arbitrary
        }
        compared++;
        String at = set + " " + row.text("clade") + " ";
        double ourX = Objects.requireNonNull(x.get(clade)).value();
        double ourY = Objects.requireNonNull(y.get(clade)).value();
        // The sign is arbitrary, but the same for x and y.
        double sign = Math.signum(ourX) == Math.signum(row.number("contrast_x")) ? 1 : -1;
        check.absolute(at + "x", row.number("contrast_x"), sign * ourX, 1e-8);
        check.absolute(at + "y", row.number("contrast_y"), sign * ourY, 1e-8);
        check.relative(
            at + "variance",
            row.number("variance"),
            Objects.requireNonNull(x.get(clade)).variance(),
            1e-8);
      }
      check.exact(set + " contrasts", set.tree().tips().size() - 1, x.size());
      check.exact(set + " compared", forks.size(), compared);
    }
  }

  /** The branchings of exactly two, as sets of tips. */
  private static Set<Set<String>> forks(PhyloTree.Node node) {
    Set<Set<String>> forks = new HashSet<>();
    node.children().forEach(child -> forks.addAll(forks(child)));
    if (node.children().size() == 2) {
      forks.add(Set.copyOf(node.tips()));
    }
    return forks;
  }

  @Test
  void slopesThroughContrastsAgreeWithRAlsoWithPolytomies() {
    var check =
        OutsideCheck.named(
            "phylo-contrast-slopes", "R 4.2.2, ape 5.7 pic(), lm(y ~ x - 1); expected/h_pgls.csv");
    for (OutsideTable.Row row :
        OutsideTable.read("expected/h_pgls.csv")
            .where(r -> r.text("model").startsWith("independent"))
            .rows()) {
      OutsideTree set = OutsideTree.named(row.text("set"));
      double[] x = standardised(set, set.x());
      double[] y = standardised(set, set.y());
      LeastSquaresFit fit = LeastSquares.throughOrigin().fit(Design.of(x, y)).value().orElseThrow();
      check.relative(set + " slope", row.number("slope"), fit.slope(0).value(), RELATIVE);
      check.relative(set + " se", row.number("se_slope"), fit.slope(0).standardError(), RELATIVE);
      check.relative(set + " sigma", row.number("sigma"), fit.residualStandardError(), RELATIVE);
    }
  }

  @Test
  void majorAxisOnATreeAgreesWithR() {
    var check =
        OutsideCheck.named(
            "phylo-axis", "R 4.2.2, phytools 1.5.1 phyl.RMA; expected/h_phylo_rma.csv");
    for (OutsideTable.Row row : OutsideTable.read("expected/h_phylo_rma.csv").rows()) {
      OutsideTree set = OutsideTree.named(row.text("set"));
      PhyloMajorAxis axis = PhyloMajorAxis.of(set.covariance(), set.means()).value().orElseThrow();
      check.relative(set + " slope", row.number("rma_slope_brownian"), axis.slope(), RELATIVE);
      check.relative(
          set + " intercept", row.number("rma_intercept_brownian"), axis.intercept(), RELATIVE);
      check.relative(set + " r2", row.number("r2_brownian"), axis.rSquared(), RELATIVE);
    }
  }

  private static Map<Set<String>, IndependentContrasts.Contrast> contrasts(
      OutsideTree set, Map<String, Double> values) {
    Map<Set<String>, IndependentContrasts.Contrast> byClade = new HashMap<>();
    IndependentContrasts.of(set.tree(), values)
        .value()
        .orElseThrow()
        .contrasts()
        .forEach(c -> byClade.put(c.clade(), c));
    return byClade;
  }

  private static double[] standardised(OutsideTree set, Map<String, Double> values) {
    return IndependentContrasts.of(set.tree(), values).value().orElseThrow().contrasts().stream()
        .mapToDouble(IndependentContrasts.Contrast::value)
        .toArray();
  }
}
