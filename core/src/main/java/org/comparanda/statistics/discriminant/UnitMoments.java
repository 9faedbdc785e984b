package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * The moments of rows, and exactly what they are without any one unit.
 *
 * <p>Taking m rows with mean x̄ and own scatter B out of a group of n with mean μ leaves A − B − n
 * m / (n − m) (x̄ − μ)(x̄ − μ)ᵀ and the mean μ + m / (n − m) (μ − x̄): no refit is needed. The
 * unit's left–right pairs go with it.
 */
public final class UnitMoments {
  private final GroupedRows rows;
  private final List<double[]> vectors;
  private final GroupMoments all;
  private final Map<Integer, List<Integer>> rowsOfUnit = new HashMap<>();

  private UnitMoments(GroupedRows rows) {
    this.rows = rows;
    this.vectors = rows.vectors();
    this.all = GroupMoments.of(rows);
    for (int i = 0; i < rows.rows(); i++) {
      rowsOfUnit.computeIfAbsent(rows.unit(i), unit -> new ArrayList<>()).add(i);
    }
  }

  public static UnitMoments of(GroupedRows rows) {
    return new UnitMoments(rows);
  }

  /** The moments of all rows. */
  public GroupMoments all() {
    return all;
  }

  /** The moments without the unit; the same as {@link #all} for a unit that has no rows. */
  public GroupMoments without(int unit) {
    int[] counts = new int[all.groups()];
    double[][] means = new double[all.groups()][];
    for (int g = 0; g < counts.length; g++) {
      counts[g] = all.count(g);
      means[g] = all.meanOrZeros(g);
    }
    SymmetricMatrix scatter = all.scatter();
    for (Map.Entry<Integer, List<double[]>> out : rowsOf(unit).entrySet()) {
      int g = out.getKey();
      int n = counts[g];
      int m = out.getValue().size();
      double[] centre = Vectors.mean(rows.columns(), out.getValue());
      double[] shift = Vectors.minus(centre, means[g]);
      if (m > 1) {
        List<double[]> residuals =
            out.getValue().stream().map(x -> Vectors.minus(x, centre)).toList();
        scatter = scatter.plus(SymmetricMatrix.sumOfProducts(rows.columns(), residuals).times(-1));
      }
      counts[g] = n - m;
      if (m < n) {
        scatter = scatter.plusProduct(-(double) n * m / (n - m), shift);
        means[g] = Vectors.plus(means[g], -(double) m / (n - m), shift);
      } else {
        means[g] = new double[rows.columns()];
      }
    }
    return new GroupMoments(
        counts, means, scatter, rows.sides().countWithout(unit), rows.sides().spreadWithout(unit));
  }

  private Map<Integer, List<double[]>> rowsOf(int unit) {
    Map<Integer, List<double[]>> byGroup = new TreeMap<>();
    for (int i : rowsOfUnit.getOrDefault(unit, List.of())) {
      byGroup.computeIfAbsent(rows.group(i), g -> new ArrayList<>()).add(vectors.get(i));
    }
    return byGroup;
  }
}
