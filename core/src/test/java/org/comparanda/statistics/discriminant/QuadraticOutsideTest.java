package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.expected;
import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;

import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.outside.OutsideTable.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuadraticOutsideTest {
  // R 4.2.2, MASS 7.3.58.2: predict(qda(X, g, prior)), qda(..., CV = TRUE), where every class has
  // more than p + 1 rows. 1e-8 absolute; the 15 near-collinear mouse distances in 23 rows 1e-6: a
  // group's own covariance has a condition of about 1e9 there, on either side of the comparison.
  @ParameterizedTest
  @ValueSource(
      strings = {
        "iris",
        "crabs",
        "penguins",
        "penguins_species_sex",
        "microtus_ref",
        "midge",
        "mouse_t2_5",
        "mouse_t2_15"
      })
  void posteriorsAndHitsAreThoseOfMass(String name) {
    OutsideSet set = OutsideSet.named(name);
    double allowed = name.equals("mouse_t2_15") ? 1e-6 : 1e-8;
    OutsideCheck check =
        OutsideCheck.named(
            "qda-" + name,
            "R 4.2.2 MASS 7.3.58.2 qda: expected/c_qda_posteriors.csv, c_confusion.csv");
    for (String prior : List.of("equal", "proportional")) {
      Priors priors = set.priors(prior);
      DiscriminantModel model = value(new Quadratic().fit(set.rows(), priors));
      Trial trial = Trial.of(set.rows(), new Quadratic(), priors);
      for (Row row : expected("c_qda_posteriors", name, prior)) {
        int i = set.row(row.text("id"));
        int g = set.group(row.text("class"));
        String what = name + ", " + prior + ", " + row.text("id") + ", " + row.text("class");
        check.absolute(
            what, row.number("posterior"), model.shares(set.rows().row(i)).of(g), allowed);
        check.absolute(
            what + ", held out",
            row.number("posterior_loo"),
            value(trial.rows().get(i).shares()).of(g),
            allowed);
      }
      OutsideTable.read("expected/c_confusion.csv")
          .where("set", name)
          .where("method", "qda")
          .where("prior", prior)
          .where("mode", "loo")
          .rows()
          .forEach(
              row ->
                  check.exact(
                      String.join(", ", name, prior, row.text("true"), row.text("assigned")),
                      row.count("count"),
                      (int)
                          trial.rows().stream()
                              .filter(r -> r.group() == set.group(row.text("true")))
                              .filter(
                                  r ->
                                      value(r.shares()).largest()
                                          == set.group(row.text("assigned")))
                              .count()));
    }
  }

  // The same on 199 unidentified voles, linear and quadratic. 1e-8 absolute.
  @Test
  void unidentifiedVolesAreThoseOfMass() {
    OutsideSet set = OutsideSet.named("microtus_ref");
    OutsideTable voles = OutsideTable.read("data/microtus_unidentified.csv");
    OutsideCheck check =
        OutsideCheck.named(
            "voles", "R 4.2.2 MASS 7.3.58.2 lda, qda: expected/c_microtus_unidentified.csv");
    for (String prior : List.of("equal", "proportional")) {
      DiscriminantModel linear = value(new Linear().fit(set.rows(), set.priors(prior)));
      DiscriminantModel quadratic = value(new Quadratic().fit(set.rows(), set.priors(prior)));
      OutsideTable.read("expected/c_microtus_unidentified.csv")
          .where("prior", prior)
          .rows()
          .forEach(
              row -> {
                Row vole = voles.where("id", row.text("id")).rows().get(0);
                double[] x = OutsideSet.values(vole, set.variables());
                String what = row.text("id") + ", " + prior;
                check.absolute(
                    what + ", lda",
                    row.number("lda_posterior_multiplex"),
                    linear.shares(x).of(0),
                    1e-8);
                check.absolute(
                    what + ", qda",
                    row.number("qda_posterior_multiplex"),
                    quadratic.shares(x).of(0),
                    1e-8);
                check.exact(
                    what + ", lda class",
                    row.text("lda_class"),
                    set.classes().get(linear.shares(x).largest()));
              });
    }
  }
}
