package org.comparanda.sizeestimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.comparanda.reference.Shelf;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.BackTransform;
import org.comparanda.statistics.phylo.Newick;
import org.comparanda.statistics.phylo.PhyloTree;
import org.junit.jupiter.api.Test;

/** The Size Desk on outside tables: everything printed equals R. 1e-8 relative. */
class SizeDeskOutsideTest {
  private static final double RELATIVE = 1e-8;

  private record TableSet(String name, String file, String x, String y) {
    FittedLine line(LineScale scale, LineMethod method) {
      Shelf shelf = TableShelf.of(OutsideTable.read("data/" + file), Optional.empty(), x, y);
      return SizeDesk.of(shelf, TableShelf.NO_PROTOCOL)
          .line(new SizeQuestion(y, List.of(x), Set.of(), method, scale, 0.95))
          .value()
          .orElseThrow();
    }
  }

  private static final List<TableSet> SETS =
      List.of(
          new TableSet("mammals", "mammals.csv", "body_kg", "brain_g"),
          new TableSet("tortues_len_wid", "tortues.csv", "width_mm", "length_mm"),
          new TableSet("penguins", "penguins.csv", "flipper_length", "body_mass"),
          new TableSet("carni70", "carni70_traits.csv", "size_kg", "range_km"));

  @Test
  void linesEstimatesIntervalsAndCorrectionsAgreeWithR() {
    var check =
        OutsideCheck.named(
            "size-desk-ols",
            "R 4.2.2 lm, predict.lm; expected/a_ols_fit, _intervals, _backtransform");
    for (TableSet set : SETS) {
      for (LineScale scale : List.of(LineScale.LOG10, LineScale.LN, LineScale.RAW)) {
        String word =
            scale == LineScale.RAW ? "none" : scale.name().toLowerCase(java.util.Locale.ROOT);
        FittedLine line = set.line(scale, LineMethod.OLS);
        OutsideTable.Row fit = rows("a_ols_fit", set.name(), word).get(0);
        String at = set.name() + " " + word + " ";
        check.exact(at + "n", fit.count("n"), line.n());
        LineCoefficient slope = line.slopes().get(0);
        check.relative(at + "slope", fit.number("slope"), slope.value(), RELATIVE);
        check.relative(
            at + "slope se", fit.number("se_slope"), value(slope.standardError()), RELATIVE);
        check.relative(
            at + "slope lo", fit.number("slope_lo95"), value(slope.interval95()).lower(), RELATIVE);
        check.relative(
            at + "intercept", fit.number("intercept"), line.intercept().value(), RELATIVE);
        check.relative(at + "s", fit.number("residual_se"), line.residualStandardError(), RELATIVE);
        check.relative(at + "r2", fit.number("r_squared"), value(line.rSquared()), RELATIVE);
        check.relative(
            at + "press rms", fit.number("loo_rmse"), value(line.pressRootMeanSquare()), RELATIVE);
        check.relative(at + "x low", fit.number("x_min"), line.xRange().get(0).low(), RELATIVE);
        check.relative(at + "x high", fit.number("x_max"), line.xRange().get(0).high(), RELATIVE);
        for (OutsideTable.Row row : rows("a_ols_intervals", set.name(), word)) {
          if (!row.text("level").startsWith("0.9499")) {
            continue;
          }
          SizeEstimate estimate = value(line.estimate(Map.of(set.x(), row.number("x0"))));
          String here = at + row.text("x0") + " ";
          check.relative(here + "estimate", row.number("bt_fit"), estimate.estimate(), RELATIVE);
          check.relative(
              here + "pi lo",
              row.number("bt_pi_lo"),
              value(estimate.prediction()).lower(),
              RELATIVE);
          check.relative(
              here + "pi hi",
              row.number("bt_pi_hi"),
              value(estimate.prediction()).upper(),
              RELATIVE);
          check.relative(
              here + "ci lo",
              row.number("bt_ci_lo"),
              value(estimate.confidence()).lower(),
              RELATIVE);
          check.relative(
              here + "ci hi",
              row.number("bt_ci_hi"),
              value(estimate.confidence()).upper(),
              RELATIVE);
          check.exact(
              here + "outside",
              row.text("outside_range").equals("TRUE"),
              estimate.outsideRange().isPresent());
        }
        if (scale.logs()) {
          OutsideTable.Row back = rows("a_ols_backtransform", set.name(), word).get(0);
          BackTransform ours = value(line.corrections());
          check.relative(
              at + "lognormal", back.number("cf_half_variance"), ours.lognormal(), RELATIVE);
          check.relative(at + "smearing", back.number("cf_smearing"), ours.smearing(), RELATIVE);
          check.relative(at + "ratio", back.number("cf_ratio"), ours.ratio(), RELATIVE);
          check.relative(
              at + "mean abs PE",
              back.number("mean_abs_PE_loo"),
              value(line.meanAbsolutePercentError()),
              RELATIVE);
        }
      }
    }
  }

  @Test
  void aStandardisedMajorAxisHasLimitsButNoStandardErrorAndSaysItDoesNotPredict() {
    FittedLine line = SETS.get(0).line(LineScale.LN, LineMethod.SMA);
    OutsideTable.Row row =
        OutsideTable.read("expected/b_line_fits.csv")
            .where("set", "mammals_ln")
            .where("method", "SMA")
            .rows()
            .get(0);
    LineCoefficient slope = line.slopes().get(0);
    assertEquals(row.number("slope"), slope.value(), 1e-8);
    assertEquals(row.number("lo95"), value(slope.interval95()).lower(), 1e-8);
    assertEquals(Optional.empty(), slope.standardError().value());
    SizeEstimate estimate = value(line.estimate(Map.of("body_kg", 10.0)));
    assertEquals(Optional.empty(), estimate.prediction().value());
    assertEquals(
        "A major axis describes how two sizes go together; it is not made to predict and gives no"
            + " prediction interval.",
        estimate.warnings().get(0));
  }

  @Test
  void aLineOnATreeAgreesWithRAndListsWhatItPruned() throws IOException {
    var check = OutsideCheck.named("size-desk-tree", "R 4.2.2 matrix formula; expected/h_pgls.csv");
    String newick;
    try (var stream =
        Objects.requireNonNull(getClass().getResourceAsStream("/outside/data/mammal49_tree.nwk"))) {
      newick = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
    PhyloTree tree = value(Newick.read(newick));
    OutsideTable table = OutsideTable.read("data/mammal49_traits.csv");
    SizeDesk desk =
        SizeDesk.of(
            TableShelf.of(table, Optional.of("species"), "body_mass_kg", "home_range_km2"),
            TableShelf.NO_PROTOCOL);
    SizeQuestion question =
        new SizeQuestion(
            "home_range_km2",
            List.of("body_mass_kg"),
            Set.of(),
            LineMethod.PGLS,
            LineScale.LOG10,
            0.95);
    FittedLine line = value(desk.line(question, LineTree.of(tree)));
    OutsideTable.Row row =
        OutsideTable.read("expected/h_pgls.csv")
            .where("set", "mammal49_home_range_on_mass")
            .where(r -> r.text("model").startsWith("pgls lambda"))
            .rows()
            .get(0);
    check.absolute("lambda", row.number("lambda"), value(line.lambda()), 1e-4);
    // 1e-5: λ itself is found to about 1e-6 on the flat top of its likelihood.
    check.relative("slope", row.number("slope"), line.slopes().get(0).value(), 1e-5);
    check.relative("se", row.number("se_slope"), value(line.slopes().get(0).standardError()), 1e-5);
    check.exact("n", row.count("n"), line.n());
    SizeDesk fewer = desk.without(new org.comparanda.reference.AnimalId("r0000"));
    FittedLine pruned = value(fewer.line(question, LineTree.of(tree)));
    assertEquals(List.of("Tips without animals, pruned: U._maritimus."), pruned.notes());
    assertEquals(48, pruned.n());
  }

  private static List<OutsideTable.Row> rows(String file, String set, String scale) {
    return OutsideTable.read("expected/" + file + ".csv")
        .where("set", set)
        .where("scale", scale)
        .rows();
  }

  private static <T> T value(Outcome<T> outcome) {
    return outcome.fold(
        v -> v,
        none -> {
          throw new AssertionError(none.reason());
        });
  }
}
