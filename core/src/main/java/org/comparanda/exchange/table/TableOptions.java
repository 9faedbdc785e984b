package org.comparanda.exchange.table;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.LengthUnit;

/**
 * How a table is to be read.
 *
 * @param as header to read for a column: {@code taxon} → {@code species}; one that the table lacks
 *     is ignored
 * @param only the measurement columns to read; empty means all
 * @param aside headers of columns that are left aside, whatever they are
 * @param element element of the whole table, or the rows to pick
 * @param unit unit of all lengths that state none
 * @param units unit of single columns, whatever their header says
 * @param decimal decimal mark, when it can't be told from the numbers
 * @param sheet the sheet of a workbook; without it the only one that holds something
 * @param headerRow the row of the header, counted as a spreadsheet counts, where titles stand above
 *     it; without it the first row that isn't blank
 * @param shape how readings are laid out
 * @param unknown what to do with names that the protocol lacks
 * @param unitDoubt what to do with a column that looks like another unit
 * @param numbers which numbers are measurements
 * @param taxa whether a shelf needs them
 */
public record TableOptions(
    Map<String, String> as,
    List<String> only,
    Set<String> aside,
    Optional<ElementKey> element,
    Optional<LengthUnit> unit,
    Map<String, LengthUnit> units,
    Optional<DecimalMark> decimal,
    Optional<String> sheet,
    Optional<Long> headerRow,
    Shape shape,
    Unknown unknown,
    UnitDoubt unitDoubt,
    Numbers numbers,
    Taxa taxa) {
  public TableOptions {
    as = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(as));
    only = List.copyOf(only);
    aside = Set.copyOf(aside);
    units = Map.copyOf(units);
  }

  /** What to do with elements, taxa and measurements that the protocol files don't know. */
  public enum Unknown {
    REFUSE,
    REGISTER
  }

  /** What to do with a column that looks like inches or centimetres. */
  public enum UnitDoubt {
    REFUSE,
    TAKE_AS_IS
  }

  /** Which numbers a plain column may hold; a measurement of the protocol is always above zero. */
  public enum Numbers {
    ABOVE_ZERO,
    ANY_SIGN
  }

  /** A column for each measurement, or a row for each reading. */
  public enum Shape {
    BY_HEADER,
    WIDE,
    LONG
  }

  /** Whether every animal of a shelf needs a taxon. */
  public enum Taxa {
    NEEDED,
    OPTIONAL
  }

  /** Headers as they are, all columns, millimetres, unknown names and doubtful units refused. */
  public static TableOptions withDefaults() {
    return new TableOptions(
        Map.of(),
        List.of(),
        Set.of(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Shape.BY_HEADER,
        Unknown.REFUSE,
        UnitDoubt.REFUSE,
        Numbers.ABOVE_ZERO,
        Taxa.NEEDED);
  }

  public TableOptions withAs(Map<String, String> other) {
    return new TableOptions(
        other, only, aside, element, unit, units, decimal, sheet, headerRow, shape, unknown,
        unitDoubt, numbers, taxa);
  }

  public TableOptions withOnly(List<String> other) {
    return new TableOptions(
        as, other, aside, element, unit, units, decimal, sheet, headerRow, shape, unknown,
        unitDoubt, numbers, taxa);
  }

  public TableOptions withAside(Set<String> other) {
    return new TableOptions(
        as, only, other, element, unit, units, decimal, sheet, headerRow, shape, unknown, unitDoubt,
        numbers, taxa);
  }

  public TableOptions withElement(ElementKey other) {
    return new TableOptions(
        as,
        only,
        aside,
        Optional.of(other),
        unit,
        units,
        decimal,
        sheet,
        headerRow,
        shape,
        unknown,
        unitDoubt,
        numbers,
        taxa);
  }

  public TableOptions withUnit(LengthUnit other) {
    return new TableOptions(
        as,
        only,
        aside,
        element,
        Optional.of(other),
        units,
        decimal,
        sheet,
        headerRow,
        shape,
        unknown,
        unitDoubt,
        numbers,
        taxa);
  }

  /** The unit of one column more. */
  public TableOptions withUnit(String column, LengthUnit other) {
    Map<String, LengthUnit> more = new HashMap<>(units);
    more.put(column, other);
    return new TableOptions(
        as, only, aside, element, unit, more, decimal, sheet, headerRow, shape, unknown, unitDoubt,
        numbers, taxa);
  }

  public TableOptions withDecimal(DecimalMark other) {
    return new TableOptions(
        as,
        only,
        aside,
        element,
        unit,
        units,
        Optional.of(other),
        sheet,
        headerRow,
        shape,
        unknown,
        unitDoubt,
        numbers,
        taxa);
  }

  public TableOptions withSheet(String other) {
    return new TableOptions(
        as,
        only,
        aside,
        element,
        unit,
        units,
        decimal,
        Optional.of(other),
        headerRow,
        shape,
        unknown,
        unitDoubt,
        numbers,
        taxa);
  }

  public TableOptions withHeaderRow(long other) {
    return new TableOptions(
        as,
        only,
        aside,
        element,
        unit,
        units,
        decimal,
        sheet,
        Optional.of(other),
        shape,
        unknown,
        unitDoubt,
        numbers,
        taxa);
  }

  public TableOptions withShape(Shape other) {
    return new TableOptions(
        as, only, aside, element, unit, units, decimal, sheet, headerRow, other, unknown, unitDoubt,
        numbers, taxa);
  }

  public TableOptions withUnknown(Unknown other) {
    return new TableOptions(
        as, only, aside, element, unit, units, decimal, sheet, headerRow, shape, other, unitDoubt,
        numbers, taxa);
  }

  public TableOptions withUnitDoubt(UnitDoubt other) {
    return new TableOptions(
        as, only, aside, element, unit, units, decimal, sheet, headerRow, shape, unknown, other,
        numbers, taxa);
  }

  public TableOptions withNumbers(Numbers other) {
    return new TableOptions(
        as, only, aside, element, unit, units, decimal, sheet, headerRow, shape, unknown, unitDoubt,
        other, taxa);
  }

  public TableOptions withTaxa(Taxa other) {
    return new TableOptions(
        as, only, aside, element, unit, units, decimal, sheet, headerRow, shape, unknown, unitDoubt,
        numbers, other);
  }

  /** The row in which the header stands, as far as it is told. */
  long rowOfHeader() {
    return headerRow.orElse(1L);
  }
}
