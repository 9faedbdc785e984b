package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.SymmetricMatrix;

/**
 * Rows with holes summed up by their pattern of holes: all that a step of expectation and
 * maximisation needs of them, so that its time does not grow with the rows.
 */
final class HolePatterns {
  private final int columns;
  private final int[] counts;
  private final List<Pattern> patterns;

  /** Rows with the same columns measured: their mean by group, their scatter about these means. */
  private record Pattern(
      List<Integer> measured, int rows, List<Cell> cells, SymmetricMatrix scatter) {
    int[] columns() {
      return measured.stream().mapToInt(Integer::intValue).toArray();
    }
  }

  private static final class Cell {
    private final int group;
    private final int rows;
    private final double[] mean;

    Cell(int group, int rows, double[] mean) {
      this.group = group;
      this.rows = rows;
      this.mean = mean;
    }
  }

  private HolePatterns(int columns, int[] counts, List<Pattern> patterns) {
    this.columns = columns;
    this.counts = counts;
    this.patterns = patterns;
  }

  static HolePatterns of(RowsWithHoles rows) {
    Map<List<Integer>, List<RowsWithHoles.Row>> byPattern = new LinkedHashMap<>();
    for (RowsWithHoles.Row row : rows.all()) {
      byPattern.computeIfAbsent(row.pattern(), p -> new ArrayList<>()).add(row);
    }
    List<Pattern> patterns = new ArrayList<>();
    byPattern.forEach((measured, own) -> patterns.add(pattern(rows.groups(), measured, own)));
    return new HolePatterns(
        rows.columns(), IntStream.range(0, rows.groups()).map(rows::count).toArray(), patterns);
  }

  private static Pattern pattern(int groups, List<Integer> measured, List<RowsWithHoles.Row> rows) {
    List<Cell> cells = new ArrayList<>();
    List<double[]> residuals = new ArrayList<>();
    for (int g = 0; g < groups; g++) {
      int group = g;
      List<double[]> own =
          rows.stream().filter(r -> r.group() == group).map(RowsWithHoles.Row::values).toList();
      if (!own.isEmpty()) {
        double[] mean = Vectors.mean(measured.size(), own);
        own.forEach(x -> residuals.add(Vectors.minus(x, mean)));
        cells.add(new Cell(g, own.size(), mean));
      }
    }
    return new Pattern(
        measured, rows.size(), cells, SymmetricMatrix.sumOfProducts(measured.size(), residuals));
  }

  private int rows() {
    return Arrays.stream(counts).sum();
  }

  /** The state that moments stand for, with as many groups. */
  MaximisationState state(GroupMoments moments) {
    List<double[]> means =
        IntStream.range(0, counts.length).mapToObj(g -> moments.meanOrZeros(g).clone()).toList();
    return new MaximisationState(means, moments.scatter().times(1.0 / moments.rows()));
  }

  /** The moments that a state stands for, the covariance rescaled to the divisor n − k. */
  GroupMoments moments(MaximisationState state) {
    SidePairs none = SidePairs.builder(columns).build();
    return new GroupMoments(
        counts.clone(),
        state.means().toArray(double[][]::new),
        state.covariance().times(rows()),
        none.count(),
        none.spread());
  }

  /** One step of expectation and maximisation; not estimable where a covariance is singular. */
  Outcome<MaximisationState> better(MaximisationState state) {
    double[][] means = new double[counts.length][columns];
    List<double[]> centres = new ArrayList<>();
    SymmetricMatrix scatter = SymmetricMatrix.zero(columns);
    for (Pattern pattern : patterns) {
      Outcome<Filling> known = Filling.of(state.covariance(), pattern.columns());
      if (known.value().isEmpty()) {
        return known.then(filling -> Outcome.of(state));
      }
      Filling filling = known.value().get();
      for (Cell cell : pattern.cells()) {
        double[] centre = filling.fill(state.means().get(cell.group), cell.mean);
        centres.add(centre);
        double part = (double) cell.rows / counts[cell.group];
        means[cell.group] = Vectors.plus(means[cell.group], part, centre);
      }
      scatter =
          scatter
              .plus(filling.filledScatter(pattern.scatter()))
              .plus(filling.leftOver().times(pattern.rows()));
    }
    int at = 0;
    for (Pattern pattern : patterns) {
      for (Cell cell : pattern.cells()) {
        double[] away = Vectors.minus(centres.get(at++), means[cell.group]);
        scatter = scatter.plusProduct(cell.rows, away);
      }
    }
    return Outcome.of(new MaximisationState(List.of(means), scatter.times(1.0 / rows())));
  }
}
