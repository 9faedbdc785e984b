package org.comparanda.suggestion;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.outside.ProofRecord;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every bone of an outside set put on the Bench, as a stranger and as itself with its animal left
 * out, by each method that an outside program has: linear, quadratic, shrunk.
 */
class OutsideBenchTest {
  /** Bones of one set put on the Bench: of more, every so manieth. */
  private static final int MOST = ProofRecord.full() ? 200 : 8;

  // R 4.2.2, MASS 7.3.58.2: lda, qda; scikit-learn 1.2.1: LinearDiscriminantAnalysis(lsqr,
  // shrinkage = "auto"); priors as given when a row is out. 1e-8 absolute.
  @ParameterizedTest
  @CsvSource({
    "iris, linear, 1e-8",
    "iris, quadratic, 1e-8",
    "iris, shrunk_per_taxon, 1e-8",
    "crabs, linear, 1e-8",
    "crabs, quadratic, 1e-8",
    "crabs, shrunk_per_taxon, 1e-8",
    "penguins, linear, 1e-8",
    "penguins, quadratic, 1e-8",
    "penguins, shrunk_per_taxon, 1e-8",
    "microtus_ref, linear, 1e-8",
    "microtus_ref, quadratic, 1e-8",
    "microtus_ref, shrunk_per_taxon, 1e-8",
    "midge, linear, 1e-8",
    "midge, quadratic, 1e-8",
    "midge, shrunk_per_taxon, 1e-8",
    "mouse_t2_5, linear, 1e-8",
    "mouse_t2_5, quadratic, 1e-8",
    "mouse_t2_5, shrunk_per_taxon, 1e-8",
    "wolves_group, linear, 1e-8",
    "wolves_group, shrunk_per_taxon, 1e-8",
  })
  void sharesAndHitTableAreTheOutsideOnes(String name, String method, double allowed) {
    OutsideSet set = OutsideSet.named(name);
    ComparisonRules rules =
        ComparisonRules.withDefaults()
            .withScale(Scale.RAW)
            .withMethod(Method.valueOf(method.toUpperCase(java.util.Locale.ROOT)));
    Comparison comparison = OutsideShelf.compare(OutsideShelf.of(set), rules);
    boolean shrunk = method.equals("shrunk_per_taxon");
    OutsideCheck check =
        OutsideCheck.named(
            "bench-" + name.replace('_', '-') + "-" + method.replace('_', '-'),
            shrunk
                ? "scikit-learn 1.2.1, lsqr, shrinkage auto: c_shrink_posteriors.csv, c_shrink_hits"
                : "R 4.2.2, MASS 7.3.58.2: c_lda_posteriors, c_qda_posteriors, c_confusion.csv");
    posteriors(check, set, comparison, method, allowed);
    Trial trial = comparison.trial(OutsideShelf.ELEMENT);
    if (shrunk) {
      check.exact("held-out hits", shrunkHits(name), trial.hits().hits());
    } else {
      hitTable(check, name, method.equals("linear") ? "lda" : "qda", trial);
    }
  }

  private static void posteriors(
      OutsideCheck check, OutsideSet set, Comparison comparison, String method, double allowed) {
    String file =
        Map.of("linear", "c_lda_posteriors", "quadratic", "c_qda_posteriors")
            .getOrDefault(method, "c_shrink_posteriors");
    String column = file.equals("c_shrink_posteriors") ? "shrunk_posterior" : "posterior";
    OutsideTable table =
        OutsideTable.read("expected/" + file + ".csv")
            .where("set", set.name())
            .where("prior", "equal");
    List<String> ids = table.rows().stream().map(row -> row.text("id")).distinct().toList();
    for (int i = 0; i < ids.size(); i += 1 + (ids.size() - 1) / MOST) {
      int row = set.row(ids.get(i));
      Map<String, Double> stranger = shares(comparison, set, row, Optional.empty());
      Map<String, Double> itself = shares(comparison, set, row, Optional.of(OutsideShelf.id(row)));
      for (OutsideTable.Row cell : table.where("id", ids.get(i)).rows()) {
        String taxon = cell.text("class");
        String what = ids.get(i) + ", " + taxon;
        check.absolute(what, cell.number(column), stranger.getOrDefault(taxon, -1.0), allowed);
        check.absolute(
            what + ", its animal out",
            cell.number(column + "_loo"),
            itself.getOrDefault(taxon, -1.0),
            allowed);
      }
    }
  }

  private static Map<String, Double> shares(
      Comparison comparison, OutsideSet set, int row, Optional<AnimalId> own) {
    return comparison
        .suggest(
            OutsideShelf.inHand(
                "x", own, OutsideShelf.bone(Side.NOT_KNOWN, set.variables(), set.rows().row(row))))
        .taxa()
        .stream()
        .collect(java.util.stream.Collectors.toMap(fit -> fit.taxon().value(), TaxonFit::share));
  }

  private static int shrunkHits(String name) {
    return OutsideTable.read("expected/c_shrink_hits.csv")
        .where("set", name)
        .where("solver", "lsqr_auto")
        .where("prior", "equal")
        .rows()
        .get(0)
        .count("loo");
  }

  private static void hitTable(OutsideCheck check, String name, String method, Trial trial) {
    OutsideTable.read("expected/c_confusion.csv")
        .where("set", name)
        .where("method", method)
        .where("prior", "equal")
        .where("mode", "loo")
        .rows()
        .forEach(
            row ->
                check.exact(
                    row.text("true") + " called " + row.text("assigned"),
                    row.count("count"),
                    trial
                        .table()
                        .getOrDefault(new TaxonName(row.text("true")), Map.of())
                        .getOrDefault(new TaxonName(row.text("assigned")), 0)));
  }
}
