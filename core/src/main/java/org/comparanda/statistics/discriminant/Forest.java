package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;
import smile.base.cart.SplitRule;
import smile.classification.RandomForest;
import smile.data.DataFrame;
import smile.data.Tuple;
import smile.data.formula.Formula;
import smile.data.vector.IntVector;

/**
 * Random forest (Breiman 2001, Mach. Learn. 45:5–32), grown by the library Smile; a second opinion.
 *
 * <p>Rows and columns are put into an order of their own first, so that theirs does not matter, and
 * every tree has its own seed. Share of a group: votes of the trees, one k-th vote added so that no
 * group has none, times prior ÷ (rows of the group ÷ all rows). Needs ten rows.
 *
 * @param trees how many
 * @param seed same seed, same forest
 */
public record Forest(int trees, long seed) implements Discriminant {
  private static final int FEWEST_ROWS = 10;
  private static final int DEEPEST = 20;
  private static final int SMALLEST_LEAF = 2;
  private static final String GROUP = "group";

  /** Held so that its level holds: Smile tells about every tree, and nobody asked. */
  private static final Logger TREES = Logger.getLogger(RandomForest.class.getName());

  /** 300 trees. */
  public static Forest withDefaults() {
    return new Forest(300, 20417);
  }

  public Forest withSeed(long other) {
    return new Forest(trees, other);
  }

  @Override
  public String name() {
    return "forest";
  }

  @Override
  public Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors) {
    GroupMoments moments = GroupMoments.of(rows);
    if (rows.rows() < FEWEST_ROWS || moments.groupsPresent() < 2) {
      return Outcome.none(
          "A forest needs %d animals of two groups, there are %d of %d."
              .formatted(FEWEST_ROWS, rows.rows(), moments.groupsPresent()),
          "Use another method, or add animals.");
    }
    return priors
        .among(rows.groups(), moments::count)
        .then(checked -> Outcome.of(grow(rows, moments, priors)));
  }

  private DiscriminantModel grow(GroupedRows rows, GroupMoments moments, Priors priors) {
    TREES.setLevel(Level.WARNING);
    int[] columns = byStrength(rows, moments);
    int[] present = IntStream.range(0, rows.groups()).filter(g -> moments.count(g) > 0).toArray();
    List<double[]> values = new ArrayList<>();
    List<Integer> labels = new ArrayList<>();
    for (int label = 0; label < present.length; label++) {
      GroupedRows own = rows.onlyGroup(present[label]).forColumns(columns);
      for (double[] row : own.vectors().stream().sorted(Arrays::compare).toList()) {
        values.add(row);
        labels.add(label);
      }
    }
    String[] names =
        IntStream.range(0, columns.length).mapToObj(j -> "x" + j).toArray(String[]::new);
    DataFrame numbers = DataFrame.of(values.toArray(double[][]::new), names);
    DataFrame frame =
        numbers.merge(IntVector.of(GROUP, labels.stream().mapToInt(Integer::intValue).toArray()));
    RandomForest forest =
        RandomForest.fit(
            Formula.lhs(GROUP),
            frame,
            trees,
            Math.max(1, (int) Math.floor(Math.sqrt(columns.length))),
            SplitRule.GINI,
            DEEPEST,
            rows.rows(),
            SMALLEST_LEAF,
            1.0,
            IntStream.generate(() -> 1).limit(present.length).toArray(),
            new SplittableRandom(seed).longs(trees, 2, Long.MAX_VALUE));
    return row -> {
      double[] x = Vectors.chosen(Vectors.checked(columns.length, row), columns);
      double[] votes = new double[present.length];
      forest.vote(Tuple.of(x, numbers.schema()), votes);
      double[] logShares = new double[rows.groups()];
      Arrays.fill(logShares, Double.NEGATIVE_INFINITY);
      for (int label = 0; label < present.length; label++) {
        double smoothed = votes[label] * trees + 1.0 / present.length;
        logShares[present[label]] = Math.log(smoothed / moments.count(present[label]));
      }
      return Shares.of(priors, logShares);
    };
  }

  /** Columns by the ratio of variance between groups to that within, the strongest first. */
  private static int[] byStrength(GroupedRows rows, GroupMoments moments) {
    double[] grand = Vectors.mean(rows.columns(), rows.vectors());
    double[] strength = new double[rows.columns()];
    for (int j = 0; j < strength.length; j++) {
      double between = 0;
      for (int g = 0; g < rows.groups(); g++) {
        double away = moments.meanOrZeros(g)[j] - grand[j];
        between += moments.count(g) * away * away;
      }
      double within = moments.scatter().get(j, j);
      strength[j] = within > 0 ? between / within : Double.POSITIVE_INFINITY;
    }
    return IntStream.range(0, strength.length)
        .boxed()
        .sorted(Comparator.comparingDouble(j -> -strength[j]))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
