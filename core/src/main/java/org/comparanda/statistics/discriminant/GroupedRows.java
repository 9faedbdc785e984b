package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Complete rows of p numbers, each of one group and one unit (the animal it belongs to).
 *
 * <p>Shape: n × p, any n; groups count from 0, some may be empty; units are any whole numbers.
 * Units of measure: natural logs of mm wherever bones are compared; nothing here depends on it. The
 * left–right differences of the same columns may go with the rows: then it is a single side that is
 * judged. Sums run in the order of the rows. Errors: {@link IllegalArgumentException} for a row of
 * another length, an unknown group, or a value that is not finite.
 */
public final class GroupedRows {
  private final int columns;
  private final int groups;
  private final List<Row> rows;
  private final int[] counts;
  private final SidePairs sides;

  private static final class Row {
    private final int group;
    private final int unit;
    private final double[] values;

    Row(int group, int unit, double[] values) {
      this.group = group;
      this.unit = unit;
      this.values = values;
    }
  }

  private GroupedRows(int columns, int groups, List<Row> rows, SidePairs sides) {
    this.columns = columns;
    this.groups = groups;
    this.rows = List.copyOf(rows);
    this.counts = new int[groups];
    rows.forEach(r -> counts[r.group]++);
    this.sides = sides;
  }

  /** Starts a table of so many columns and groups. */
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

    public Builder add(int group, int unit, double... values) {
      if (group < 0 || group >= groups) {
        throw new IllegalArgumentException("Group " + group + " of " + groups);
      }
      rows.add(new Row(group, unit, Vectors.checked(columns, values)));
      return this;
    }

    public GroupedRows build() {
      return new GroupedRows(columns, groups, rows, SidePairs.builder(columns).build());
    }
  }

  public int rows() {
    return rows.size();
  }

  public int columns() {
    return columns;
  }

  /** Number of groups, the empty ones too. */
  public int groups() {
    return groups;
  }

  public int group(int row) {
    return rows.get(row).group;
  }

  public int unit(int row) {
    return rows.get(row).unit;
  }

  public double value(int row, int column) {
    return rows.get(row).values[column];
  }

  /** A copy of one row. */
  public double[] row(int row) {
    return rows.get(row).values.clone();
  }

  /** Rows in the group. */
  public int count(int group) {
    return counts[group];
  }

  /** The left–right differences that go with the rows; none unless given. */
  public SidePairs sides() {
    return sides;
  }

  /** The same rows, where a single side is judged with the spread of these differences. */
  public GroupedRows withSides(SidePairs pairs) {
    if (pairs.columns() != columns) {
      throw new IllegalArgumentException(pairs.columns() + " columns of sides, " + columns);
    }
    return new GroupedRows(columns, groups, rows, pairs);
  }

  /** The columns named, in that order, of rows and sides. */
  public GroupedRows forColumns(int... chosen) {
    List<Row> part =
        rows.stream().map(r -> new Row(r.group, r.unit, Vectors.chosen(r.values, chosen))).toList();
    return new GroupedRows(chosen.length, groups, part, sides.forColumns(chosen));
  }

  /** The same without all rows and side pairs of a unit. */
  public GroupedRows withoutUnit(int unit) {
    return where(row -> unit(row) != unit, sides.withoutUnit(unit));
  }

  /** The same without all rows and side pairs of these units. */
  public GroupedRows withoutUnits(Set<Integer> out) {
    return where(row -> !out.contains(unit(row)), sides.withoutUnits(out));
  }

  /** The same with the rows of one group only; groups keep their numbers. */
  public GroupedRows onlyGroup(int group) {
    return where(row -> group(row) == group, sides);
  }

  /** Every row for itself, as if each came from another animal: for comparison only. */
  public GroupedRows eachRowItsOwnUnit() {
    List<Row> alone =
        IntStream.range(0, rows()).mapToObj(i -> new Row(group(i), i, rows.get(i).values)).toList();
    return new GroupedRows(columns, groups, alone, sides);
  }

  /** Every row and side pair by the same linear map to so many columns. */
  GroupedRows mapped(int newColumns, UnaryOperator<double[]> map) {
    List<Row> turned =
        rows.stream().map(r -> new Row(r.group, r.unit, map.apply(r.values))).toList();
    return new GroupedRows(newColumns, groups, turned, sides.mapped(newColumns, map));
  }

  private GroupedRows where(IntPredicate keep, SidePairs pairs) {
    List<Row> kept = IntStream.range(0, rows()).filter(keep).mapToObj(rows::get).toList();
    return new GroupedRows(columns, groups, kept, pairs);
  }

  /** The rows themselves, for sums within the package; not to be changed. */
  List<double[]> vectors() {
    return rows.stream().map(r -> r.values).toList();
  }
}
