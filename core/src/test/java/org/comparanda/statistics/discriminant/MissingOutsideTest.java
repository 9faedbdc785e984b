package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.outside.OutsideTable.Row;
import org.comparanda.statistics.Distributions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Exact refits to the measurements that are there. */
class MissingOutsideTest {
  // R 4.2.2, MASS 7.3.58.2: lda(X[, present], g, prior, tol = 1e-8), predict and CV = TRUE;
  // mahalanobis(). 1e-8 absolute (posteriors), 1e-8 relative (D2, chi-square tail).
  @ParameterizedTest
  @ValueSource(strings = {"penguins", "crabs", "microtus_ref", "wolves_location"})
  void subsetsAreRefittedAsMassDoes(String name) {
    OutsideSet set = OutsideSet.named(name);
    OutsideCheck check =
        OutsideCheck.named(
            "subsets-" + name,
            "R 4.2.2 MASS 7.3.58.2 lda, mahalanobis(): expected/d_missing_patterns.csv");
    UnitMoments units = UnitMoments.of(set.rows());
    Map<String, Integer> hitsOf = new HashMap<>();
    for (Row row : OutsideTable.read("expected/d_missing_patterns.csv").where("set", name).rows()) {
      int[] columns = set.columns(List.of(row.text("present").split(";")));
      Priors priors = set.priors(row.text("prior"));
      int i = set.row(row.text("id"));
      int g = set.group(row.text("class"));
      double[] x = Vectors.chosen(set.rows().row(i), columns);
      GroupMoments all = units.all().forColumns(columns);
      double squared = value(GroupDistances.of(all)).squared(g, x);
      String what =
          String.join(
              ", ",
              name,
              row.text("present"),
              row.text("prior"),
              row.text("id"),
              row.text("class"));
      check.absolute(
          what,
          row.number("posterior"),
          value(new Linear().fitMoments(all, priors)).shares(x).of(g),
          1e-8);
      check.absolute(
          what + ", held out",
          row.number("posterior_loo"),
          heldOut(units, i, columns, priors, x).of(g),
          1e-8);
      check.relative(what + ", D2", row.number("d2_pooled"), squared, 1e-8);
      check.relative(
          what + ", chi-square",
          row.number("p_chi2"),
          Distributions.chiSquareUpperTail(squared, columns.length),
          1e-8);
      int hits =
          hitsOf.computeIfAbsent(
              row.text("present") + row.text("prior"), each -> hits(set, units, columns, priors));
      check.exact(what + ", hits", row.count("loo_hits"), hits);
    }
  }

  // MASS: every row with its own 30 % of holes, judged by the others on what it has; prior fixed.
  // Hits exact, posteriors 1e-8 absolute (crabs 1e-7, INDEX.md).
  @ParameterizedTest
  @ValueSource(strings = {"penguins", "crabs"})
  void everyRowIsJudgedOnWhatItHas(String name) {
    OutsideSet set = OutsideSet.named(name);
    OutsideTable mask = OutsideTable.read("data/" + name + "_mask.csv");
    OutsideCheck check =
        OutsideCheck.named(
            "masked-" + name,
            "R 4.2.2 MASS 7.3.58.2 lda on present variables: expected/d_masked_loo_*.csv");
    UnitMoments units = UnitMoments.of(set.rows());
    for (String prior : List.of("equal", "proportional")) {
      Priors priors = set.priors(prior);
      int hits = 0;
      for (int i = 0; i < set.ids().size(); i++) {
        Row present = mask.where("id", set.ids().get(i)).rows().get(0);
        int[] columns = columns(set, present);
        if (columns.length == 0) {
          continue;
        }
        double[] x = Vectors.chosen(set.rows().row(i), columns);
        Shares shares = heldOut(units, i, columns, priors, x);
        hits += shares.largest() == set.rows().group(i) ? 1 : 0;
        String id = set.ids().get(i);
        OutsideTable.read("expected/d_masked_loo_" + name + ".csv")
            .where("prior", prior)
            .where("id", id)
            .rows()
            .forEach(
                row -> {
                  for (String each : set.classes()) {
                    check.absolute(
                        String.join(", ", name, prior, id, each),
                        row.number("post_" + each),
                        shares.of(set.group(each)),
                        name.equals("crabs") ? 1e-7 : 1e-8);
                  }
                });
      }
      Row summary =
          OutsideTable.read("expected/d_masked_loo_summary.csv")
              .where("set", name)
              .where("prior", prior)
              .rows()
              .get(0);
      check.exact(name + ", " + prior + ", hits", summary.count("hits"), hits);
    }
  }

  // MASS: 199 unidentified voles with holes. 1e-8 absolute.
  @Test
  void unidentifiedVolesWithHoles() {
    OutsideSet set = OutsideSet.named("microtus_ref");
    OutsideTable voles = OutsideTable.read("data/microtus_unidentified.csv");
    OutsideCheck check =
        OutsideCheck.named(
            "masked-voles",
            "R 4.2.2 MASS 7.3.58.2 lda: expected/d_microtus_unidentified_masked.csv");
    GroupMoments all = GroupMoments.of(set.rows());
    for (Row row : OutsideTable.read("expected/d_microtus_unidentified_masked.csv").rows()) {
      List<String> present = List.of(row.text("present").split(";"));
      Row vole = voles.where("id", row.text("id")).rows().get(0);
      Shares shares =
          value(new Linear().fitMoments(all.forColumns(set.columns(present)), Priors.equal(2)))
              .shares(OutsideSet.values(vole, present));
      check.absolute(row.text("id"), row.number("post_multiplex"), shares.of(0), 1e-8);
      check.exact(
          row.text("id") + ", class", row.text("assigned"), set.classes().get(shares.largest()));
    }
  }

  private static int hits(OutsideSet set, UnitMoments units, int[] columns, Priors priors) {
    int hits = 0;
    for (int i = 0; i < set.rows().rows(); i++) {
      double[] x = Vectors.chosen(set.rows().row(i), columns);
      int called = heldOut(units, i, columns, priors, x).largest();
      hits += called == set.rows().group(i) ? 1 : 0;
    }
    return hits;
  }

  private static Shares heldOut(
      UnitMoments units, int unit, int[] columns, Priors priors, double[] x) {
    GroupMoments left = units.without(unit).forColumns(columns);
    return value(new Linear().fitMoments(left, priors)).shares(x);
  }

  private static int[] columns(OutsideSet set, Row present) {
    return IntStream.range(0, set.variables().size())
        .filter(j -> present.text(set.variables().get(j)).equals("1"))
        .toArray();
  }
}
