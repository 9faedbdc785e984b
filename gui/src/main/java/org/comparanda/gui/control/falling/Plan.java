package org.comparanda.gui.control.falling;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.comparanda.gui.control.falling.FallingPicture.Column;
import org.comparanda.gui.control.falling.FallingPicture.Fit;
import org.comparanda.gui.control.falling.FallingPicture.Row;
import org.comparanda.gui.control.falling.Frame.ColumnPlace;
import org.comparanda.gui.control.falling.Frame.RowPlace;
import org.comparanda.gui.control.plot.Lettering;
import org.comparanda.gui.control.plot.TextWidth;

/**
 * Divides a place among names, columns and numbers.
 *
 * <p>Shape: from the left the names, as wide as the longest needs; the columns in equal parts; bars
 * and numbers. All sizes follow the size of the text.
 */
record Plan(FallingPicture picture, double width, double height, double text, TextWidth measure) {
  private static final double TALL = 2.6;
  private static final int MANY = 16;

  /** Height above the rows, for the headings. */
  double top() {
    return 3.7 * text;
  }

  /** Height under the rows, for the scale. */
  double bottom() {
    return 1.9 * text;
  }

  /** Where the rows end. */
  double floor() {
    return height - bottom();
  }

  /** Radius of a dot. */
  double dot() {
    return Math.max(0.25 * text, Math.min(0.38 * text, 0.065 * rowHeight()));
  }

  /** Room from row to row. */
  double rowHeight() {
    int rows = Math.max(1, picture.rows().size());
    return Math.max(leastRow(), Math.min(9.5 * text, (floor() - top()) / rows));
  }

  /** Whether a row has room for two lines of text. */
  boolean tall() {
    return rowHeight() >= TALL * text;
  }

  /** Height that shows every row. */
  double leastHeight() {
    return top() + bottom() + leastRow() * Math.max(1, picture.rows().size());
  }

  /** Width that shows every name and a readable strip of each column. */
  double leastWidth() {
    return names() + numbers() + picture.columns().size() * 3.1 * text;
  }

  /** Width of the names with their notes. */
  double names() {
    double widest = crowded() ? measure.of(picture.captions().crowd(99), noteLettering()) : 0;
    for (Row row : picture.rows()) {
      double name = measure.of(row.name(), nameLettering());
      double note = measure.of(row.note(), noteLettering());
      widest = Math.max(widest, tall() ? Math.max(name, note) : name + text + note);
    }
    return widest + 1.3 * text;
  }

  private boolean crowded() {
    return picture.rows().stream()
        .flatMap(row -> row.strips().values().stream())
        .anyMatch(dots -> dots.size() > Swarm.CROWD);
  }

  /** Width of bars and numbers. */
  double numbers() {
    return 13.4 * text;
  }

  Lettering nameLettering() {
    return new Lettering(text, Lettering.Face.ITALIC, Lettering.Anchor.START, Lettering.Turn.LEVEL);
  }

  Lettering noteLettering() {
    return new Lettering(
        0.88 * text, Lettering.Face.PLAIN, Lettering.Anchor.START, Lettering.Turn.LEVEL);
  }

  /** Where everything comes to rest. */
  Frame frame() {
    Map<String, ColumnPlace> columns = new LinkedHashMap<>();
    double room = Math.max(1, width - names() - numbers());
    double each = room / Math.max(1, picture.columns().size());
    double gap = 1.1 * text;
    int i = 0;
    for (Column column : picture.columns()) {
      columns.put(column.key(), column(column, names() + i * each, Math.max(1, each - gap)));
      i++;
    }
    Map<String, RowPlace> rows = new LinkedHashMap<>();
    int place = 0;
    for (Row row : picture.rows()) {
      double middle = top() + (place + 0.5) * rowHeight();
      double share = row.fit().map(Fit::share).orElse(0.0);
      rows.put(row.key(), new RowPlace(row, middle, rowHeight(), 1, share, swarm(row, columns)));
      place++;
    }
    return new Frame(columns, rows);
  }

  private ColumnPlace column(Column column, double x, double wide) {
    var span =
        DoubleStream.concat(
                picture.rows().stream()
                    .flatMapToDouble(
                        r -> r.dots(column.key()).stream().mapToDouble(FallingPicture.Dot::value)),
                column.reading().stream().mapToDouble(v -> v))
            .summaryStatistics();
    double low = span.getCount() == 0 ? 0 : span.getMin();
    double high = span.getCount() == 0 ? 1 : span.getMax();
    double room = high > low ? (high - low) * 0.06 : Math.max(0.5, high * 0.05);
    double value = column.reading().orElse(low);
    double fallen = column.reading().isPresent() ? 1 : 0;
    return new ColumnPlace(column, x, wide, low - room, high + room, value, fallen);
  }

  private Swarm swarm(Row row, Map<String, ColumnPlace> columns) {
    Map<String, Double> apart = new LinkedHashMap<>();
    columns.forEach(
        (key, c) -> apart.put(key, 2.05 * dot() * (c.high() - c.low()) / Math.max(1, c.width())));
    int lanes = (int) Math.floor((rowHeight() * 0.86 - 2 * dot()) / laneStep()) + 1;
    return Swarm.of(row, apart, lanes);
  }

  /** Height from lane to lane. */
  double laneStep() {
    return 1.75 * dot();
  }

  private double leastRow() {
    return (picture.rows().size() > MANY ? 1.45 : 1.85) * text;
  }
}
