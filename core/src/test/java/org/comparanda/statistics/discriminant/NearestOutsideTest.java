package org.comparanda.statistics.discriminant;

import static org.comparanda.statistics.discriminant.LinearOutsideTest.value;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.outside.OutsideTable.Row;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.Nearest.Scaling;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NearestOutsideTest {
  // R 4.2.2, class 7.3.21: knn.cv(X, g, k); zscore = scale(X) over all rows before anything is left
  // out, so the test scales first and the method not at all. Rows with ties are left out there;
  // here
  // they are those whose two best shares are alike or that have more than k voters. Exact.
  @ParameterizedTest
  @ValueSource(strings = {"iris", "wolves_location", "midge", "microtus_ref", "mouse_t2_5"})
  void assignmentsAreThoseOfKnn(String name) {
    OutsideSet set = OutsideSet.named(name);
    OutsideCheck check =
        OutsideCheck.named("knn-" + name, "R 4.2.2 class 7.3.21 knn.cv: expected/c_knn_rows.csv");
    for (int k : List.of(1, 3, 5)) {
      for (String scaling : List.of("raw", "zscore")) {
        Trial trial = trial(set, k, scaling);
        OutsideTable.read("expected/c_knn_rows.csv")
            .where("set", name)
            .where("k", Integer.toString(k))
            .where("scaling", scaling)
            .where(row -> !row.text("assigned").equals("TIE"))
            .rows()
            .forEach(
                row ->
                    check.exact(
                        String.join(", ", name, "k = " + k, scaling, row.text("id")),
                        row.text("assigned"),
                        set.classes()
                            .get(
                                value(trial.rows().get(set.row(row.text("id"))).shares())
                                    .largest())));
      }
    }
  }

  // The counts of the same, over the rows that have no tie. Exact.
  @ParameterizedTest
  @ValueSource(strings = {"iris", "wolves_location", "midge", "microtus_ref", "mouse_t2_5"})
  void hitsAreThoseOfKnn(String name) {
    OutsideSet set = OutsideSet.named(name);
    OutsideCheck check =
        OutsideCheck.named(
            "knn-hits-" + name, "R 4.2.2 class 7.3.21 knn.cv: expected/c_knn_hits.csv");
    for (Row row : OutsideTable.read("expected/c_knn_hits.csv").where("set", name).rows()) {
      Trial trial = trial(set, row.count("k"), row.text("scaling"));
      Set<String> tied = new HashSet<>();
      OutsideTable.read("expected/c_knn_rows.csv")
          .where("set", name)
          .where("k", row.text("k"))
          .where("scaling", row.text("scaling"))
          .where("assigned", "TIE")
          .rows()
          .forEach(tie -> tied.add(tie.text("id")));
      long hits =
          IntStream.range(0, set.ids().size())
              .filter(i -> !tied.contains(set.ids().get(i)))
              .filter(i -> trial.rows().get(i).hit())
              .count();
      check.exact(
          String.join(", ", name, "k = " + row.text("k"), row.text("scaling")),
          row.count("correct"),
          (int) hits);
    }
  }

  private static Trial trial(OutsideSet set, int k, String scaling) {
    GroupedRows rows = scaling.equals("raw") ? set.rows() : set.scaled(reciprocals(set.rows()));
    return Trial.of(rows, new VotesOnly(new Nearest(k, Scaling.NONE)), Priors.counts(rows));
  }

  /** A plain vote: priors by the counts of the rows that vote. */
  private record VotesOnly(Discriminant nearest) implements Discriminant {
    @Override
    public String name() {
      return nearest.name();
    }

    @Override
    public Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors) {
      return nearest.fit(rows, Priors.counts(rows));
    }
  }

  private static double[] reciprocals(GroupedRows rows) {
    double[] factors = new double[rows.columns()];
    for (int j = 0; j < factors.length; j++) {
      int column = j;
      double[] values =
          IntStream.range(0, rows.rows()).mapToDouble(i -> rows.value(i, column)).toArray();
      double mean = IntStream.range(0, values.length).mapToDouble(i -> values[i]).sum();
      mean /= values.length;
      double sum = 0;
      for (double v : values) {
        sum += (v - mean) * (v - mean);
      }
      factors[j] = 1 / Math.sqrt(sum / (values.length - 1));
    }
    return factors;
  }
}
