package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
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
  private final SymmetricMatrix products;
  private final Map<Integer, List<Pair>> byUnit;

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
    this.products = products(columns, pairs);
    this.byUnit = pairs.stream().collect(Collectors.groupingBy(p -> p.unit));
  }

  private static SymmetricMatrix products(int columns, List<Pair> pairs) {
    return SymmetricMatrix.sumOfProducts(columns, pairs.stream().map(p -> p.difference).toList());
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
    return spread(products, count());
  }

  /** Number of pairs of other units. */
  int countWithout(int unit) {
    return count() - byUnit.getOrDefault(unit, List.of()).size();
  }

  /** W_side of the pairs of other units. */
  SymmetricMatrix spreadWithout(int unit) {
    List<Pair> own = byUnit.getOrDefault(unit, List.of());
    return own.isEmpty()
        ? spread()
        : spread(products.plus(products(columns, own).times(-1)), countWithout(unit));
  }

  private static SymmetricMatrix spread(SymmetricMatrix products, int count) {
    return count == 0 ? SymmetricMatrix.zero(products.size()) : products.times(0.5 / count);
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
