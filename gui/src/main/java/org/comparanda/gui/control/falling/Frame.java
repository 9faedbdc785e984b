package org.comparanda.gui.control.falling;

import java.util.LinkedHashMap;
import java.util.Map;
import org.comparanda.gui.control.falling.FallingPicture.Column;
import org.comparanda.gui.control.falling.FallingPicture.Row;

/**
 * Where everything stands at one moment of the motion.
 *
 * @param columns place of each column
 * @param rows place of each row; a row on its way out is still here
 */
record Frame(Map<String, ColumnPlace> columns, Map<String, RowPlace> rows) {
  /**
   * A column: its strip from {@code x} to {@code x + width} shows {@code low} to {@code high}.
   *
   * @param value the reading
   * @param fallen how far its line has come down, 0 to 1
   */
  record ColumnPlace(
      Column column, double x, double width, double low, double high, double value, double fallen) {
    double place(double mm) {
      return x + width * (mm - low) / (high - low);
    }

    ColumnPlace towards(ColumnPlace end, double part) {
      return new ColumnPlace(
          end.column,
          mix(x, end.x, part),
          mix(width, end.width, part),
          mix(low, end.low, part),
          mix(high, end.high, part),
          fallen > 0 ? mix(value, end.value, part) : end.value,
          mix(fallen, end.fallen, part));
    }
  }

  /**
   * A row.
   *
   * @param middle height of its middle
   * @param height room from row to row
   * @param presence 0 (gone) to 1 (there)
   * @param share length of its bar, 0 to 1
   */
  record RowPlace(
      Row row, double middle, double height, double presence, double share, Swarm swarm) {
    RowPlace towards(RowPlace end, double part) {
      return new RowPlace(
          end.row,
          mix(middle, end.middle, part),
          mix(height, end.height, part),
          mix(presence, end.presence, part),
          mix(share, end.share, part),
          end.swarm);
    }

    RowPlace gone(double floor) {
      return new RowPlace(row, floor, height, 0, share, swarm);
    }

    RowPlace faint() {
      return new RowPlace(row, middle, height, 0, 0, swarm);
    }
  }

  /** The moment on the way to another frame; rows that leave slide to the floor. */
  Frame towards(Frame end, double part, double floor) {
    Map<String, ColumnPlace> columnsNow = new LinkedHashMap<>();
    end.columns.forEach(
        (key, place) ->
            columnsNow.put(key, columns.getOrDefault(key, raised(place)).towards(place, part)));
    Map<String, RowPlace> rowsNow = new LinkedHashMap<>();
    rows.forEach(
        (key, place) -> {
          if (!end.rows.containsKey(key) && place.presence() > 0) {
            rowsNow.put(key, place.towards(place.gone(floor), part));
          }
        });
    end.rows.forEach(
        (key, place) ->
            rowsNow.put(key, rows.getOrDefault(key, place.faint()).towards(place, part)));
    return new Frame(columnsNow, rowsNow);
  }

  private static ColumnPlace raised(ColumnPlace c) {
    return new ColumnPlace(c.column(), c.x(), c.width(), c.low(), c.high(), c.value(), 0);
  }

  private static double mix(double from, double to, double part) {
    return from + (to - from) * part;
  }
}
