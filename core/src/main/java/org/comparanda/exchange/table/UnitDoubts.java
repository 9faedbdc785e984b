package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The units of all columns of one table, watched row by row. The geometric middles of the
 * protocol's ranges stand for the proportions of one animal of about 30 kg and 1 m (rough; common
 * practice, no source): on a row each value is compared with the median of the others, and with the
 * body where its mass (as a cube root) or length is given, each as so many times that animal's. The
 * animal's size falls out.
 */
final class UnitDoubts {
  private static final double MIDDLE_MASS_G = 30_000;
  private static final double MIDDLE_LENGTH_MM = 1_000;

  private final Map<TableColumn, UnitSuspicion> columns = new HashMap<>();
  private final List<Scaled> row = new ArrayList<>();

  /** One value of the row at hand, as natural log of so many times the protocol's middle. */
  private record Scaled(UnitSuspicion column, double log) {}

  /** A value as typed, in the row at hand. */
  void saw(TableColumn column, double value, UsualRange range) {
    UnitSuspicion suspicion = columns.computeIfAbsent(column, UnitSuspicion::new);
    suspicion.saw(value, range);
    double mm = value * column.unit().factor();
    if (mm > 0) {
      range.proportion().ifPresent(p -> row.add(new Scaled(suspicion, Math.log(mm / p))));
    }
  }

  void endOfRow(Optional<BoneRow> read) {
    Optional<Double> body = read.flatMap(UnitDoubts::body);
    for (int i = 0; i < row.size(); i++) {
      Scaled value = row.get(i);
      if (row.size() > 1) {
        value.column().apartFromSiblings(value.log() - middleWithout(i));
      }
      body.ifPresent(b -> value.column().apartFromBody(value.log() - b));
    }
    row.clear();
  }

  /** The mass before the length: it can't be in the wrong unit of length. */
  private static Optional<Double> body(BoneRow row) {
    return row.bodyMassG()
        .map(g -> Math.log(g / MIDDLE_MASS_G) / 3)
        .or(() -> row.bodyLengthMm().map(mm -> Math.log(mm / MIDDLE_LENGTH_MM)));
  }

  private double middleWithout(int own) {
    double[] others =
        IntStream.range(0, row.size())
            .filter(i -> i != own)
            .mapToDouble(i -> row.get(i).log())
            .sorted()
            .toArray();
    return (others[others.length / 2] + others[(others.length - 1) / 2]) / 2;
  }

  /** A problem for every column whose unit is doubtful and that no person has spoken for. */
  void report(long headerRow, ProblemList problems) {
    columns.values().stream()
        .filter(c -> c.column().unit().said() != ColumnUnit.SaidBy.PERSON)
        .sorted(Comparator.comparingInt(c -> c.column().index()))
        .forEach(
            c -> c.doubt().ifPresent(doubt -> problem(headerRow, c.column(), doubt, problems)));
  }

  private static void problem(
      long headerRow, TableColumn column, UnitSuspicion.Doubt doubt, ProblemList problems) {
    problems.doubtfulUnit(
        headerRow,
        column,
        doubt.unit(),
        "the column looks like "
            + doubt.unit().symbol()
            + " rather than "
            + column.unit().stated().orElse("mm")
            + ": "
            + doubt.reason(),
        "Say --unit "
            + column.measured()
            + "="
            + doubt.unit().symbol()
            + " if it is, or --as-is if the numbers are right as they stand.");
  }
}
