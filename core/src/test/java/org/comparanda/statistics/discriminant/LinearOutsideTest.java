package org.comparanda.statistics.discriminant;

import static org.junit.jupiter.api.Assertions.assertAll;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.outside.OutsideTable.Row;
import org.comparanda.statistics.Outcome;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LinearOutsideTest {
  private static final Linear LINEAR = new Linear();

  static List<String> names() {
    return OutsideSet.names();
  }

  // R 4.2.2, MASS 7.3.58.2: predict(lda(X, g, prior, tol = 1e-8))$posterior and lda(..., CV =
  // TRUE)$posterior. 1e-8 absolute; crabs and the 15 near-collinear mouse distances 1e-7, as MASS
  // itself whitens by an ill-conditioned singular value decomposition there (INDEX.md).
  @ParameterizedTest
  @MethodSource("names")
  void posteriorsAreThoseOfMass(String name) {
    OutsideSet set = OutsideSet.named(name);
    double allowed = name.equals("crabs") || name.equals("mouse_t2_15") ? 1e-7 : 1e-8;
    OutsideCheck check =
        OutsideCheck.named(
            "lda-posteriors-" + name,
            "R 4.2.2 MASS 7.3.58.2 predict(lda), lda(CV=TRUE): expected/c_lda_posteriors.csv");
    List<Executable> all = new ArrayList<>();
    for (String prior : List.of("equal", "proportional")) {
      Priors priors = set.priors(prior);
      DiscriminantModel model = value(LINEAR.fit(set.rows(), priors));
      Trial trial = Trial.of(set.rows(), LINEAR, priors);
      for (Row row : expected("c_lda_posteriors", name, prior)) {
        int i = set.row(row.text("id"));
        int g = set.group(row.text("class"));
        String what = name + ", " + prior + ", " + row.text("id") + ", " + row.text("class");
        double ours = model.shares(set.rows().row(i)).of(g);
        all.add(() -> check.absolute(what, row.number("posterior"), ours, allowed));
        double held = value(trial.rows().get(i).shares()).of(g);
        all.add(
            () -> check.absolute(what + ", held out", row.number("posterior_loo"), held, allowed));
      }
    }
    assertAll(all);
  }

  // MASS: counts of lda, by hits and by confusion table. Exact.
  @ParameterizedTest
  @MethodSource("names")
  void hitsAndConfusionsAreThoseOfMass(String name) {
    OutsideSet set = OutsideSet.named(name);
    OutsideCheck check =
        OutsideCheck.named(
            "lda-hits-" + name,
            "R 4.2.2 MASS 7.3.58.2 lda: expected/c_hits.csv, expected/c_confusion.csv");
    for (String prior : List.of("equal", "proportional")) {
      Priors priors = set.priors(prior);
      DiscriminantModel model = value(LINEAR.fit(set.rows(), priors));
      Trial trial = Trial.of(set.rows(), LINEAR, priors);
      for (String mode : List.of("resubstitution", "loo")) {
        int[][] counts = new int[set.classes().size()][set.classes().size()];
        for (int i = 0; i < set.rows().rows(); i++) {
          Shares shares =
              mode.equals("loo")
                  ? value(trial.rows().get(i).shares())
                  : model.shares(set.rows().row(i));
          counts[set.rows().group(i)][shares.largest()]++;
        }
        confusion(name, prior, mode)
            .forEach(
                row ->
                    check.exact(
                        String.join(
                            ", ", name, prior, mode, row.text("true"), row.text("assigned")),
                        row.count("count"),
                        counts[set.group(row.text("true"))][set.group(row.text("assigned"))]));
      }
      OutsideTable.read("expected/c_hits.csv")
          .where("set", name)
          .where("method", "lda")
          .where("prior", prior)
          .where("mode", "loo")
          .rows()
          .forEach(
              row ->
                  check.exact(
                      name + ", " + prior + ", loo hits, " + row.text("class"),
                      row.count("correct"),
                      row.text("class").equals("ALL")
                          ? trial.hits().hits()
                          : trial.hits(set.group(row.text("class"))).hits()));
    }
  }

  // scikit-learn 1.2.1, solver = "svd": a second program for the same numbers. 1e-7 as above: the
  // two outside programs differ by that much from each other on the ill-conditioned sets.
  @ParameterizedTest
  @MethodSource("names")
  void posteriorsAreThoseOfScikitLearn(String name) {
    OutsideSet set = OutsideSet.named(name);
    OutsideCheck check =
        OutsideCheck.named(
            "lda-svd-" + name,
            "scikit-learn 1.2.1 LinearDiscriminantAnalysis(svd): expected/c_shrink_posteriors.csv");
    for (String prior : List.of("equal", "proportional")) {
      Priors priors = set.priors(prior);
      DiscriminantModel model = value(LINEAR.fit(set.rows(), priors));
      Trial trial = Trial.of(set.rows(), LINEAR, priors);
      for (Row row : expected("c_shrink_posteriors", name, prior)) {
        int i = set.row(row.text("id"));
        int g = set.group(row.text("class"));
        String what = name + ", " + prior + ", " + row.text("id") + ", " + row.text("class");
        check.absolute(
            what, row.number("svd_posterior"), model.shares(set.rows().row(i)).of(g), 1e-7);
        check.absolute(
            what + ", held out",
            row.number("svd_posterior_loo"),
            value(trial.rows().get(i).shares()).of(g),
            1e-7);
      }
    }
  }

  static List<Row> expected(String file, String set, String prior) {
    return OutsideTable.read("expected/" + file + ".csv")
        .where("set", set)
        .where("prior", prior)
        .rows();
  }

  private static List<Row> confusion(String set, String prior, String mode) {
    return OutsideTable.read("expected/c_confusion.csv")
        .where("set", set)
        .where("method", "lda")
        .where("prior", prior)
        .where("mode", mode)
        .rows();
  }

  static <T> T value(Outcome<T> outcome) {
    return outcome.fold(
        v -> v,
        none -> {
          throw new AssertionError(none.reason());
        });
  }
}
