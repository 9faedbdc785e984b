package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * All that the pooled methods need of the rows: counts, means, the summed scatter A within groups,
 * and the spread between sides.
 *
 * <p>Any choice of columns is refitted exactly from it ({@link #forColumns}), and units can be
 * taken out exactly ({@link UnitMoments}). Groups without rows keep their number.
 */
public final class GroupMoments {
  private final int[] counts;
  private final double[][] means;
  private final SymmetricMatrix scatter;
  private final int pairs;
  private final SymmetricMatrix sideSpread;

  GroupMoments(
      int[] counts,
      double[][] means,
      SymmetricMatrix scatter,
      int pairs,
      SymmetricMatrix sideSpread) {
    this.counts = counts;
    this.means = means;
    this.scatter = scatter;
    this.pairs = pairs;
    this.sideSpread = sideSpread;
  }

  /** Means first, then the scatter about them, both in the order of the rows. */
  public static GroupMoments of(GroupedRows rows) {
    int p = rows.columns();
    int[] counts = new int[rows.groups()];
    double[][] means = new double[rows.groups()][];
    List<double[]> vectors = rows.vectors();
    for (int g = 0; g < counts.length; g++) {
      List<double[]> own = new ArrayList<>();
      for (int i = 0; i < vectors.size(); i++) {
        if (rows.group(i) == g) {
          own.add(vectors.get(i));
        }
      }
      counts[g] = own.size();
      means[g] = Vectors.mean(p, own);
    }
    List<double[]> residuals = new ArrayList<>(vectors.size());
    for (int i = 0; i < vectors.size(); i++) {
      residuals.add(Vectors.minus(vectors.get(i), means[rows.group(i)]));
    }
    return new GroupMoments(
        counts,
        means,
        SymmetricMatrix.sumOfProducts(p, residuals),
        rows.sides().count(),
        rows.sides().spread());
  }

  /**
   * The same means and W, as if they stood on so many rows of each group: fewer than there are
   * where holes were filled. The groups that have rows stay the same; k must stay below the rows.
   */
  public GroupMoments standingOn(int... rows) {
    int df = Arrays.stream(rows).sum() - groupsPresent();
    return new GroupMoments(
        rows.clone(), means, scatter.times((double) df / degreesOfFreedom()), pairs, sideSpread);
  }

  /** The same moments, where a single side is judged with the spread of these differences. */
  public GroupMoments withSides(SidePairs sides) {
    return new GroupMoments(counts, means, scatter, sides.count(), sides.spread());
  }

  /** The same for the columns named, in that order: as if fitted to them alone. */
  public GroupMoments forColumns(int... columns) {
    double[][] part = new double[means.length][];
    for (int g = 0; g < part.length; g++) {
      part[g] = Vectors.chosen(means[g], columns);
    }
    return new GroupMoments(
        counts, part, scatter.forColumns(columns), pairs, sideSpread.forColumns(columns));
  }

  public int columns() {
    return scatter.size();
  }

  /** Number of groups, the empty ones too. */
  public int groups() {
    return counts.length;
  }

  /** Rows of the group. */
  public int count(int group) {
    return counts[group];
  }

  /** n, rows in all. */
  public int rows() {
    int sum = 0;
    for (int count : counts) {
      sum += count;
    }
    return sum;
  }

  /** k, groups with at least one row. */
  public int groupsPresent() {
    int present = 0;
    for (int count : counts) {
      present += count > 0 ? 1 : 0;
    }
    return present;
  }

  /** n − k. */
  public int degreesOfFreedom() {
    return rows() - groupsPresent();
  }

  /** A copy of the mean of a group that has rows. */
  public double[] mean(int group) {
    if (counts[group] == 0) {
      throw new IllegalArgumentException("Group " + group + " has no rows, so no mean");
    }
    return means[group].clone();
  }

  /** A, the sum of (x − mean)(x − mean)ᵀ over all rows. */
  public SymmetricMatrix scatter() {
    return scatter;
  }

  /** m, the left–right pairs behind the spread between sides. */
  public int sidePairs() {
    return pairs;
  }

  /** Whether the pairs are enough for a single side to be judged with its own spread. */
  public boolean judgesOneSide() {
    return pairs >= SidePairs.FEWEST;
  }

  /** ½ W_side where pairs are enough, else zero: what a single side adds to any covariance. */
  public SymmetricMatrix oneSide() {
    return judgesOneSide() ? sideSpread.times(0.5) : SymmetricMatrix.zero(columns());
  }

  /** W_side, zero without pairs. */
  SymmetricMatrix sideSpread() {
    return sideSpread;
  }

  double[] meanOrZeros(int group) {
    return means[group];
  }

  /** W = A / (n − k); not estimable unless n − k ≥ p. */
  public Outcome<SymmetricMatrix> pooledCovariance() {
    int p = columns();
    int df = degreesOfFreedom();
    if (p == 0 || df < p) {
      return Outcome.none(
          "Too few animals for %d measurements: %d rows in %d groups leave %d, and %d are needed."
              .formatted(p, rows(), groupsPresent(), df, Math.max(p, 1)),
          "Leave out measurements, or add animals.");
    }
    return Outcome.of(scatter.times(1.0 / df));
  }

  /** What a row is judged with: W, and ½ W_side on top for a single side. */
  public Outcome<SymmetricMatrix> spread() {
    return pooledCovariance().then(w -> Outcome.of(judgesOneSide() ? w.plus(oneSide()) : w));
  }
}
