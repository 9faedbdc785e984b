package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.expected;
import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;

import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.outside.OutsideTable.Row;
import org.comparanda.statistics.SymmetricMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShrinkageOutsideTest {
  private static final ShrunkPerGroup PER_GROUP = new ShrunkPerGroup();

  static List<String> names() {
    return OutsideSet.names();
  }

  // scikit-learn 1.2.1: sklearn.covariance.ledoit_wolf of each standardised class, and of the
  // pooled residuals divided by the pooled standard deviation. 1e-8 relative: closed formula.
  @ParameterizedTest
  @MethodSource("names")
  void intensitiesAreThoseOfScikitLearn(String name) {
    OutsideSet set = OutsideSet.named(name);
    OutsideCheck check =
        OutsideCheck.named(
            "shrink-intensity-" + name,
            "scikit-learn 1.2.1 ledoit_wolf: expected/c_shrink_ledoit_wolf.csv");
    GroupMoments moments = GroupMoments.of(set.rows());
    SymmetricMatrix w = moments.scatter().times(1.0 / moments.degreesOfFreedom());
    for (Row row :
        OutsideTable.read("expected/c_shrink_ledoit_wolf.csv").where("set", name).rows()) {
      String what = name + ", " + row.text("kind") + ", " + row.text("class");
      switch (row.text("kind")) {
        case "class_standardised" -> {
          int g = set.group(row.text("class"));
          double ours = ShrunkPerGroup.shrunk(set.rows().onlyGroup(g), moments.mean(g)).intensity();
          check.relative(what, row.number("shrinkage"), ours, 1e-8);
        }
        case "pooled_residuals_zscored" ->
            check.relative(
                what,
                row.number("shrinkage"),
                value(ShrunkPooled.intensity(set.rows(), moments, w)),
                1e-8);
        // Raw columns are not offered: the answer would depend on their units.
        default -> {}
      }
    }
  }

  // scikit-learn 1.2.1: LinearDiscriminantAnalysis(solver = "lsqr", shrinkage = "auto").covariance_
  // 1e-8 relative: closed formula.
  @ParameterizedTest
  @MethodSource("names")
  void mixedCovariancesAreThoseOfScikitLearn(String name) {
    OutsideSet set = OutsideSet.named(name);
    OutsideCheck check =
        OutsideCheck.named(
            "shrink-covariance-" + name,
            "scikit-learn 1.2.1 lsqr, shrinkage=auto, covariance_: expected/c_shrink_cov.csv");
    for (String prior : List.of("equal", "proportional")) {
      Priors priors = set.priors(prior);
      SymmetricMatrix sum = SymmetricMatrix.zero(set.variables().size());
      for (int g = 0; g < set.classes().size(); g++) {
        GroupedRows own = set.rows().onlyGroup(g);
        SymmetricMatrix shrunk =
            ShrunkPerGroup.shrunk(own, GroupMoments.of(own).mean(g)).covariance();
        sum = sum.plus(shrunk.times(priors.of(g)));
      }
      for (Row row : expected("c_shrink_cov", name, prior)) {
        int i = set.variables().indexOf(row.text("row"));
        int j = set.variables().indexOf(row.text("col"));
        check.relative(
            name + ", " + prior + ", " + row.text("row") + ", " + row.text("col"),
            row.number("cov_auto"),
            sum.get(i, j),
            1e-8);
      }
    }
  }

  // scikit-learn 1.2.1: predict_proba of the same, and of LeaveOneOut with fixed priors. 1e-8
  // absolute.
  @ParameterizedTest
  @MethodSource("names")
  void posteriorsAndHitsAreThoseOfScikitLearn(String name) {
    OutsideSet set = OutsideSet.named(name);
    OutsideCheck check =
        OutsideCheck.named(
            "shrink-posteriors-" + name,
            "scikit-learn 1.2.1 lsqr, shrinkage=auto: expected/c_shrink_posteriors.csv, _hits.csv");
    for (String prior : List.of("equal", "proportional")) {
      Priors priors = set.priors(prior);
      DiscriminantModel model = value(PER_GROUP.fit(set.rows(), priors));
      Trial trial = Trial.of(set.rows(), PER_GROUP, priors);
      for (Row row : expected("c_shrink_posteriors", name, prior)) {
        int i = set.row(row.text("id"));
        int g = set.group(row.text("class"));
        String what = name + ", " + prior + ", " + row.text("id") + ", " + row.text("class");
        check.absolute(
            what, row.number("shrunk_posterior"), model.shares(set.rows().row(i)).of(g), 1e-8);
        check.absolute(
            what + ", held out",
            row.number("shrunk_posterior_loo"),
            value(trial.rows().get(i).shares()).of(g),
            1e-8);
      }
      for (Row row : expected("c_shrink_hits", name, prior)) {
        if (row.text("solver").equals("lsqr_auto")) {
          check.exact(
              name + ", " + prior + ", held-out hits", row.count("loo"), trial.hits().hits());
        }
      }
    }
  }

  // The same on 199 unidentified voles. 1e-8 absolute.
  @Test
  void unidentifiedVolesAreThoseOfScikitLearn() {
    OutsideSet set = OutsideSet.named("microtus_ref");
    OutsideTable voles = OutsideTable.read("data/microtus_unidentified.csv");
    OutsideCheck check =
        OutsideCheck.named(
            "shrink-voles",
            "scikit-learn 1.2.1 lsqr, shrinkage=auto: expected/c_shrink_microtus_unidentified.csv");
    for (String prior : List.of("equal", "proportional")) {
      DiscriminantModel model = value(PER_GROUP.fit(set.rows(), set.priors(prior)));
      OutsideTable.read("expected/c_shrink_microtus_unidentified.csv")
          .where("prior", prior)
          .rows()
          .forEach(
              row -> {
                Row vole = voles.where("id", row.text("id")).rows().get(0);
                double[] x = OutsideSet.values(vole, set.variables());
                check.absolute(
                    row.text("id") + ", " + prior,
                    row.number("shrunk_posterior_multiplex"),
                    model.shares(x).of(0),
                    1e-8);
              });
    }
  }
}
