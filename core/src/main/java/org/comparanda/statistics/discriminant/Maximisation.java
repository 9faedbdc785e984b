package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * Means of the groups and their pooled covariance from rows with holes, by expectation and
 * maximisation under normality.
 *
 * <p>What comes out are moments as if there were no holes: their W is the maximum of the likelihood
 * times n / (n − k), their {@code forColumns} the marginal for the measurements that a bone has. It
 * holds where values are missing at random; breakage is not. No F of a typicality must be taken
 * from it ({@link ConformalWithHoles} ranks instead). Source: Dempster, Laird and Rubin 1977, J. R.
 * Stat. Soc. B 39:1–38; Little and Rubin 2002.
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
    return problem(rows).orElseGet(() -> climb(HolePatterns.of(rows), start(rows)));
  }

  /**
   * The same, begun at the moments of nearly the same rows instead of far below: where it ends does
   * not depend on it. To be asked only where those could be fitted and no row was taken away.
   */
  Outcome<GroupMoments> fit(RowsWithHoles rows, GroupMoments near) {
    HolePatterns patterns = HolePatterns.of(rows);
    return climb(patterns, patterns.state(near));
  }

  private static Optional<Outcome<GroupMoments>> problem(RowsWithHoles rows) {
    int p = rows.columns();
    for (int i = 0; i < p; i++) {
      for (int j = 0; j <= i; j++) {
        if (rows.together(i, j) < p + 2) {
          return problem(
              "Measurements %d and %d were taken together on %d animals; %d are needed."
                  .formatted(j + 1, i + 1, rows.together(i, j), p + 2),
              "Leave one of them out, or measure more animals.");
        }
      }
    }
    for (int g = 0; g < rows.groups(); g++) {
      for (int j = 0; j < p; j++) {
        if (rows.count(g) > 0 && rows.count(g, j) == 0) {
          return problem(
              "Group %d has no animal with measurement %d.".formatted(g + 1, j + 1),
              "Leave the measurement or the group out, or measure one.");
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Outcome<GroupMoments>> problem(String reason, String remedy) {
    return Optional.of(Outcome.none(reason, remedy));
  }

  /**
   * Steps until one moves nothing any more. After each two, a leap along the line that they bend to
   * is tried, and kept where the next step from there is no longer than the last (Varadhan and
   * Roland 2008, Scand. J. Stat. 35:335–353): few steps also where most is missing.
   */
  private Outcome<GroupMoments> climb(HolePatterns patterns, MaximisationState start) {
    MaximisationState state = start;
    for (int step = 0; step < steps; step++) {
      MaximisationState from = state;
      Outcome<MaximisationState> first = patterns.better(from);
      Outcome<MaximisationState> second = first.then(patterns::better);
      if (second.value().isEmpty()) {
        return second.then(s -> Outcome.of(patterns.moments(s)));
      }
      MaximisationState one = first.value().orElseThrow();
      MaximisationState two = second.value().get();
      if (from.change(one) <= settled) {
        return Outcome.of(patterns.moments(one));
      }
      state =
          from.leap(one, two)
              .flatMap(
                  leap ->
                      patterns
                          .better(leap)
                          .value()
                          .filter(landed -> leap.change(landed) <= one.change(two)))
              .orElse(two);
    }
    return Outcome.none(
        "The fit with holes did not settle in " + steps + " steps.",
        "Leave out the measurement with the most holes.");
  }

  private static MaximisationState start(RowsWithHoles rows) {
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
    return new MaximisationState(means, diagonal);
  }

  private static List<double[]> column(RowsWithHoles rows, int group, int column) {
    GroupedRows one = rows.complete(column).onlyGroup(group);
    return one.vectors();
  }
}
