package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * Means of the groups and their pooled covariance from rows with holes, by expectation and
 * maximisation under normality.
 *
 * <p>What comes out are moments as if there were no holes: their W is the maximum of the likelihood
 * times n / (n − k), their {@code forColumns} the marginal for the measurements that a bone has. It
 * holds where values are missing at random; breakage is not. A typicality must not be taken from
 * it. Source: Dempster, Laird and Rubin 1977, J. R. Stat. Soc. B 39:1–38; Little and Rubin 2002.
 *
 * @param steps most steps before it is given up
 * @param settled largest last change, in standard deviations, that counts as none
 */
public record Maximisation(int steps, double settled) {
  /** 20,000 steps, 1e-12. */
  public static Maximisation withDefaults() {
    return new Maximisation(20_000, 1e-12);
  }

  /**
   * Fits. Not estimable unless every pair of columns was measured together in p + 2 rows and every
   * group that has rows has each column at least once, or if it does not settle.
   */
  public Outcome<GroupMoments> fit(RowsWithHoles rows) {
    int p = rows.columns();
    for (int i = 0; i < p; i++) {
      for (int j = 0; j <= i; j++) {
        if (rows.together(i, j) < p + 2) {
          return Outcome.none(
              "Measurements %d and %d were taken together on %d animals; %d are needed."
                  .formatted(j + 1, i + 1, rows.together(i, j), p + 2),
              "Leave one of them out, or measure more animals.");
        }
      }
    }
    for (int g = 0; g < rows.groups(); g++) {
      for (int j = 0; j < p; j++) {
        if (rows.count(g) > 0 && rows.count(g, j) == 0) {
          return Outcome.none(
              "Group %d has no animal with measurement %d.".formatted(g + 1, j + 1),
              "Leave the measurement or the group out, or measure one.");
        }
      }
    }
    return climb(rows, start(rows));
  }

  private record State(List<double[]> means, SymmetricMatrix covariance) {}

  private Outcome<GroupMoments> climb(RowsWithHoles rows, State start) {
    State state = start;
    for (int step = 0; step < steps; step++) {
      Outcome<State> next = better(rows, state);
      if (next.value().isEmpty()) {
        return next.then(s -> Outcome.of(moments(rows, s)));
      }
      double change = change(state, next.value().get());
      state = next.value().get();
      if (change <= settled) {
        return Outcome.of(moments(rows, state));
      }
    }
    return Outcome.none(
        "The fit with holes did not settle in " + steps + " steps.",
        "Leave out the measurement with the most holes.");
  }

  private static State start(RowsWithHoles rows) {
    int p = rows.columns();
    List<double[]> means = new ArrayList<>();
    double[] squares = new double[p];
    for (int g = 0; g < rows.groups(); g++) {
      double[] mean = new double[p];
      for (int j = 0; j < p; j++) {
        List<double[]> column = column(rows, g, j);
        mean[j] = Vectors.mean(1, column)[0];
        for (double[] value : column) {
          squares[j] += (value[0] - mean[j]) * (value[0] - mean[j]) / rows.together(j, j);
        }
      }
      means.add(mean);
    }
    SymmetricMatrix diagonal = SymmetricMatrix.zero(p);
    for (int j = 0; j < p; j++) {
      double[] axis = new double[p];
      axis[j] = 1;
      diagonal = diagonal.plusProduct(squares[j], axis);
    }
    return new State(means, diagonal);
  }

  private static List<double[]> column(RowsWithHoles rows, int group, int column) {
    GroupedRows one = rows.complete(column).onlyGroup(group);
    return one.vectors();
  }

  /** One step of expectation and maximisation. */
  private static Outcome<State> better(RowsWithHoles rows, State state) {
    int p = rows.columns();
    Map<List<Integer>, Filling> fillings = new HashMap<>();
    List<double[]> filled = new ArrayList<>();
    SymmetricMatrix unsure = SymmetricMatrix.zero(p);
    for (RowsWithHoles.Row row : rows.all()) {
      List<Integer> pattern = IntStream.of(row.measured()).boxed().toList();
      if (!fillings.containsKey(pattern)) {
        Outcome<Filling> filling = Filling.of(state.covariance(), row.measured());
        if (filling.value().isEmpty()) {
          return filling.then(f -> Outcome.of(state));
        }
        fillings.put(pattern, filling.value().get());
      }
      Filling filling = fillings.get(pattern);
      filled.add(filling.fill(state.means().get(row.group()), row.values()));
      unsure = unsure.plus(filling.leftOver());
    }
    List<double[]> means = new ArrayList<>();
    for (int g = 0; g < rows.groups(); g++) {
      int group = g;
      means.add(
          Vectors.mean(
              p,
              IntStream.range(0, filled.size())
                  .filter(i -> rows.all().get(i).group() == group)
                  .mapToObj(filled::get)
                  .toList()));
    }
    List<double[]> residuals = new ArrayList<>();
    for (int i = 0; i < filled.size(); i++) {
      residuals.add(Vectors.minus(filled.get(i), means.get(rows.all().get(i).group())));
    }
    SymmetricMatrix scatter = SymmetricMatrix.sumOfProducts(p, residuals).plus(unsure);
    return Outcome.of(new State(means, scatter.times(1.0 / rows.rows())));
  }

  private static double change(State before, State after) {
    SymmetricMatrix a = before.covariance();
    SymmetricMatrix b = after.covariance();
    double largest = 0;
    for (int i = 0; i < a.size(); i++) {
      double deviation = Math.sqrt(b.get(i, i));
      for (int j = 0; j < a.size(); j++) {
        double unit = deviation * Math.sqrt(b.get(j, j));
        largest = Math.max(largest, Math.abs(a.get(i, j) - b.get(i, j)) / unit);
      }
      for (int g = 0; g < before.means().size(); g++) {
        double moved = before.means().get(g)[i] - after.means().get(g)[i];
        largest = Math.max(largest, Math.abs(moved) / deviation);
      }
    }
    return largest;
  }

  private static GroupMoments moments(RowsWithHoles rows, State state) {
    int[] counts = IntStream.range(0, rows.groups()).map(rows::count).toArray();
    SidePairs none = SidePairs.builder(rows.columns()).build();
    return new GroupMoments(
        counts,
        state.means().toArray(double[][]::new),
        state.covariance().times(rows.rows()),
        none.count(),
        none.spread());
  }
}
