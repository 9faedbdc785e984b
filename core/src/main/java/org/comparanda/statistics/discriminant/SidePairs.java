package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * Left minus right of animals of which both sides are known, in the columns of the rows they go
 * with.
 *
 * <p>A single side lies around the mean of the two with half the spread W_side = Σ d dᵀ / (2m) over
 * the m differences d, which are not centred. Errors: {@link IllegalArgumentException} as for
 * {@link GroupedRows}.
 */
public final class SidePairs {
  /** Fewer pairs say too little about the spread between sides, and it is left out. */
  public static final int FEWEST = 10;

  private final int columns;
  private final List<Pair> pairs;

  private static final class Pair {
    private final int unit;
    private final double[] difference;

    Pair(int unit, double[] difference) {
      this.unit = unit;
      this.difference = difference;
    }
  }

  private SidePairs(int columns, List<Pair> pairs) {
    this.columns = columns;
    this.pairs = List.copyOf(pairs);
  }

  public static Builder builder(int columns) {
    return new Builder(columns);
  }

  /** Collects pairs. */
  public static final class Builder {
    private final int columns;
    private final List<Pair> pairs = new ArrayList<>();

    private Builder(int columns) {
      this.columns = columns;
    }

    /** Adds left minus right of one animal. */
    public Builder add(int unit, double... differences) {
      pairs.add(new Pair(unit, Vectors.checked(columns, differences)));
      return this;
    }

    public SidePairs build() {
      return new SidePairs(columns, pairs);
    }
  }

  public int columns() {
    return columns;
  }

  /** Number of pairs. */
  public int count() {
    return pairs.size();
  }

  /** Whether there are pairs enough for the spread to count. */
  public boolean enough() {
    return count() >= FEWEST;
  }

  /** W_side; zero without pairs. */
  public SymmetricMatrix spread() {
    SymmetricMatrix sum =
        SymmetricMatrix.sumOfProducts(columns, pairs.stream().map(p -> p.difference).toList());
    return pairs.isEmpty() ? sum : sum.times(0.5 / count());
  }

  public SidePairs forColumns(int... chosen) {
    return new SidePairs(
        chosen.length,
        pairs.stream().map(p -> new Pair(p.unit, Vectors.chosen(p.difference, chosen))).toList());
  }

  public SidePairs withoutUnit(int unit) {
    return new SidePairs(columns, pairs.stream().filter(p -> p.unit != unit).toList());
  }

  SidePairs withoutUnits(Set<Integer> out) {
    return new SidePairs(columns, pairs.stream().filter(p -> !out.contains(p.unit)).toList());
  }

  SidePairs mapped(int newColumns, UnaryOperator<double[]> map) {
    return new SidePairs(
        newColumns, pairs.stream().map(p -> new Pair(p.unit, map.apply(p.difference))).toList());
  }
}
