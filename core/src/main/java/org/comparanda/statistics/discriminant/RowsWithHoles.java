package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Rows of which some numbers were never measured, each of one group and one unit.
 *
 * <p>Shape and errors as for {@link GroupedRows}; a row holds the columns that were measured. A row
 * without any is left out.
 */
public final class RowsWithHoles {
  private final int columns;
  private final int groups;
  private final List<Row> rows;

  /** One row: which columns it has, in rising order, and their values. */
  static final class Row {
    private final int group;
    private final int unit;
    private final int[] measured;
    private final double[] values;

    private Row(int group, int unit, int[] measured, double[] values) {
      this.group = group;
      this.unit = unit;
      this.measured = measured;
      this.values = values;
    }

    int group() {
      return group;
    }

    int[] measured() {
      return measured;
    }

    double[] values() {
      return values;
    }

    /** The columns measured, as a key. */
    List<Integer> pattern() {
      return IntStream.of(measured).boxed().toList();
    }

    boolean has(int column) {
      return Arrays.binarySearch(measured, column) >= 0;
    }
  }

  private RowsWithHoles(int columns, int groups, List<Row> rows) {
    this.columns = columns;
    this.groups = groups;
    this.rows = List.copyOf(rows);
  }

  public static Builder builder(int columns, int groups) {
    return new Builder(columns, groups);
  }

  /** Collects rows. */
  public static final class Builder {
    private final int columns;
    private final int groups;
    private final List<Row> rows = new ArrayList<>();

    private Builder(int columns, int groups) {
      this.columns = columns;
      this.groups = groups;
    }

    /** Adds a row: column to value, for the columns that were measured. */
    public Builder add(int group, int unit, Map<Integer, Double> cells) {
      int[] measured = cells.keySet().stream().mapToInt(Integer::intValue).sorted().toArray();
      if (group < 0
          || group >= groups
          || Arrays.stream(measured).anyMatch(j -> j < 0 || j >= columns)) {
        throw new IllegalArgumentException("Group " + group + ", columns " + cells.keySet());
      }
      if (measured.length > 0) {
        double[] values = Arrays.stream(measured).mapToDouble(cells::get).toArray();
        rows.add(new Row(group, unit, measured, Vectors.checked(measured.length, values)));
      }
      return this;
    }

    public RowsWithHoles build() {
      return new RowsWithHoles(columns, groups, rows);
    }
  }

  public int columns() {
    return columns;
  }

  /** Number of groups, the empty ones too. */
  public int groups() {
    return groups;
  }

  /** Rows with at least one value. */
  public int rows() {
    return rows.size();
  }

  /** The rows that have all the columns named, those columns only, in that order. */
  public GroupedRows complete(int... chosen) {
    GroupedRows.Builder builder = GroupedRows.builder(chosen.length, groups);
    for (Row row : rows) {
      if (Arrays.stream(chosen).allMatch(row::has)) {
        double[] values =
            Arrays.stream(chosen)
                .mapToDouble(j -> row.values[Arrays.binarySearch(row.measured, j)])
                .toArray();
        builder.add(row.group, row.unit, values);
      }
    }
    return builder.build();
  }

  /** The same without all rows of a unit. */
  public RowsWithHoles withoutUnit(int unit) {
    return new RowsWithHoles(columns, groups, rows.stream().filter(r -> r.unit != unit).toList());
  }

  /** The same with one more row, without holes and of a unit that no other row has. */
  public RowsWithHoles plus(int group, double... values) {
    List<Row> more = new ArrayList<>(rows);
    int[] all = IntStream.range(0, columns).toArray();
    more.add(new Row(group, -1, all, Vectors.checked(columns, values)));
    return new RowsWithHoles(columns, groups, more);
  }

  /** The same without the groups of which some column was never measured: nothing tells it. */
  public RowsWithHoles withoutUntoldGroups() {
    Set<Integer> told =
        IntStream.range(0, groups).filter(this::told).boxed().collect(Collectors.toSet());
    return new RowsWithHoles(
        columns, groups, rows.stream().filter(r -> told.contains(r.group)).toList());
  }

  private boolean told(int group) {
    return IntStream.range(0, columns).allMatch(j -> count(group, j) > 0);
  }

  /** How many rows have both columns. */
  public int together(int column, int other) {
    return (int) rows.stream().filter(r -> r.has(column) && r.has(other)).count();
  }

  /** How many rows of a group have the column. */
  public int count(int group, int column) {
    return (int) rows.stream().filter(r -> r.group == group && r.has(column)).count();
  }

  /**
   * Rows of each group that have the two columns which fewest of its rows have together, at least
   * one where the group has rows: on no more do its part of the means and of the spread stand.
   */
  public int[] fewestTogether() {
    int[] fewest = new int[groups];
    for (int g = 0; g < groups; g++) {
      int group = g;
      List<Row> own = rows.stream().filter(r -> r.group == group).toList();
      int least = own.size();
      for (int i = 0; i < columns; i++) {
        for (int j = 0; j <= i; j++) {
          int a = i;
          int b = j;
          least = Math.min(least, (int) own.stream().filter(r -> r.has(a) && r.has(b)).count());
        }
      }
      fewest[g] = own.isEmpty() ? 0 : Math.max(1, least);
    }
    return fewest;
  }

  /** Rows of the group. */
  public int count(int group) {
    return (int) IntStream.range(0, rows.size()).filter(i -> rows.get(i).group == group).count();
  }

  List<Row> all() {
    return rows;
  }
}
