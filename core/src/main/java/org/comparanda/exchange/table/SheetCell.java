package org.comparanda.exchange.table;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.Row;
import org.jspecify.annotations.Nullable;

/** Turns a spreadsheet's cell into ours: what kind it is, and its text. */
final class SheetCell {
  private SheetCell() {}

  static List<Cell> all(Row row) {
    List<Cell> cells = new ArrayList<>(row.getCellCount());
    for (int i = 0; i < row.getCellCount(); i++) {
      cells.add(of(row.getCell(i)));
    }
    return cells;
  }

  private static Cell of(org.dhatim.fastexcel.reader.@Nullable Cell cell) {
    if (cell == null || cell.getType() == CellType.EMPTY) {
      return Cell.EMPTY;
    }
    Object value = cell.getValue();
    if (cell.getType() == CellType.ERROR || (value == null && cell.getType() == CellType.FORMULA)) {
      String shown = cell.getRawValue();
      return new Cell(shown == null || shown.isBlank() ? "formula" : shown, Cell.Kind.FAULT);
    }
    if (value instanceof BigDecimal number) {
      return isDate(cell) ? date(cell) : new Cell(text(cell, number), Cell.Kind.NUMBER);
    }
    return value instanceof Boolean
        ? new Cell(String.valueOf(value), Cell.Kind.FAULT)
        : Cell.typed(Objects.toString(value, ""));
  }

  private static Cell date(org.dhatim.fastexcel.reader.Cell cell) {
    LocalDateTime at = cell.asDate();
    return new Cell(
        at.toLocalTime().equals(LocalTime.MIDNIGHT) ? at.toLocalDate().toString() : at.toString(),
        Cell.Kind.DATE);
  }

  /** Built-in formats of dates and times, or one of its own that holds their letters. */
  private static boolean isDate(org.dhatim.fastexcel.reader.Cell cell) {
    Integer id = cell.getDataFormatId();
    if (id != null && ((id >= 14 && id <= 22) || (id >= 45 && id <= 47))) {
      return true;
    }
    String form = cell.getDataFormatString();
    if (form == null || form.equalsIgnoreCase("general")) {
      return false;
    }
    String plain = form.replaceAll("\"[^\"]*\"|\\\\.|_.|\\*.|\\[(?![hms]+\\])[^\\]]*\\]", "");
    return plain.matches("(?is).*[ymdhs].*");
  }

  /** The shortest decimal that gives the stored number; zeros in front where its format asks so. */
  private static String text(org.dhatim.fastexcel.reader.Cell cell, BigDecimal stored) {
    double value = stored.doubleValue();
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      String whole = Long.toString((long) value);
      String form = cell.getDataFormatString();
      int zeros = form != null && form.matches("0{2,}") ? form.length() : 0;
      return "0".repeat(Math.max(0, zeros - whole.length())) + whole;
    }
    return new BigDecimal(Double.toString(value)).toPlainString();
  }
}
