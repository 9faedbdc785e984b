package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;

/**
 * Full conformal ranks where the rows have holes: the new row is added to a group, expectation and
 * maximisation is done again, and all rows are ranked by how far they lie from their mean.
 *
 * <p>A row with q of the p columns is judged on those q, by the chi-square tail of D² m / (m − 1)
 * on q, m the rows of its group, so that rows with different holes can be ranked. Without holes the
 * ranks are those of {@link Conformal}. Exact if values, holes included, are exchangeable.
 */
public final class ConformalWithHoles {
  private static final double ALIKE = 1e-9;

  private final RowsWithHoles rows;
  private final Maximisation how;
  private final GroupMoments start;

  private ConformalWithHoles(RowsWithHoles rows, Maximisation how, GroupMoments start) {
    this.rows = rows;
    this.how = how;
    this.start = start;
  }

  /**
   * For rows of which {@code fitted} are the moments by maximisation; each further fit starts
   * there.
   */
  public static ConformalWithHoles of(RowsWithHoles rows, Maximisation how, GroupMoments fitted) {
    return new ConformalWithHoles(rows, how, fitted);
  }

  /** The rank of a new row without holes in each group that has rows, in their order. */
  public Outcome<List<ConformalRank>> ranks(double... row) {
    double[] x = Vectors.checked(rows.columns(), row);
    List<ConformalRank> ranks = new ArrayList<>();
    for (int g = 0; g < rows.groups(); g++) {
      if (rows.count(g) > 0) {
        Outcome<ConformalRank> rank = rank(g, x);
        if (rank.value().isEmpty()) {
          return rank.then(r -> Outcome.of(List.of(r)));
        }
        ranks.add(rank.value().get());
      }
    }
    return Outcome.of(List.copyOf(ranks));
  }

  private Outcome<ConformalRank> rank(int group, double[] x) {
    RowsWithHoles with = rows.plus(group, x);
    return how.fit(with, start)
        .then(moments -> tails(with, moments))
        .then(tails -> Outcome.of(rank(group, with, tails)));
  }

  /** How far each row lies from its group's mean, as a chance; the new row is the last. */
  private static Outcome<List<Double>> tails(RowsWithHoles with, GroupMoments moments) {
    Map<List<Integer>, Cholesky> spreads = new HashMap<>();
    List<Double> tails = new ArrayList<>();
    for (RowsWithHoles.Row row : with.all()) {
      List<Integer> pattern = row.pattern();
      if (!spreads.containsKey(pattern)) {
        Outcome<Cholesky> spread =
            moments.forColumns(row.measured()).pooledCovariance().then(Cholesky::of);
        if (spread.value().isEmpty()) {
          return spread.then(s -> Outcome.of(tails));
        }
        spreads.put(pattern, spread.value().get());
      }
      double m = moments.count(row.group());
      double[] mean = Vectors.chosen(moments.mean(row.group()), row.measured());
      double squared = spreads.get(pattern).squaredDistance(Vectors.minus(row.values(), mean));
      // A group's only row lies on its mean and can't be compared.
      tails.add(
          m > 1
              ? Distributions.chiSquareUpperTail(squared * m / (m - 1), pattern.size())
              : Double.NaN);
    }
    return Outcome.of(tails);
  }

  private ConformalRank rank(int group, RowsWithHoles with, List<Double> tails) {
    double own = tails.get(tails.size() - 1);
    int asFarInGroup = 0;
    int asFarInAll = 0;
    int compared = 0;
    for (int i = 0; i < tails.size(); i++) {
      boolean asFar = tails.get(i) <= own * (1 + ALIKE);
      asFarInGroup += asFar && with.all().get(i).group() == group ? 1 : 0;
      asFarInAll += asFar ? 1 : 0;
      compared += Double.isNaN(tails.get(i)) ? 0 : 1;
    }
    return new ConformalRank(
        group,
        rows.count(group),
        (double) asFarInGroup / (rows.count(group) + 1),
        (double) asFarInAll / compared,
        compared);
  }
}
