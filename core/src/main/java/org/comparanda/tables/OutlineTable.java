package org.comparanda.tables;

import java.util.List;
import org.comparanda.bone.Portion;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.Outline;
import org.comparanda.measurement.Protocol;

/** Reads the outline drawings; each belongs to an element, each landmark lies in a view. */
final class OutlineTable {
  private OutlineTable() {}

  /** Errors: {@link BrokenTable} naming file, row and field. */
  static List<Outline> read(TableFile file, Protocol protocol) {
    List<TableRow> rows = file.rows("outlines");
    ProtocolTables.requireOnce(rows, "element");
    return rows.stream().map(row -> outline(row, protocol)).toList();
  }

  private static Outline outline(TableRow row, Protocol protocol) {
    Outline outline =
        new Outline(
            ProtocolTables.knownElement(row, protocol),
            row.rows("views").stream().map(OutlineTable::view).toList(),
            row.text("source"));
    for (Measurement m : protocol.of(outline.element())) {
      if (m.landmarks().isPresent() && outline.viewOf(m.landmarks().get()).isEmpty()) {
        throw row.broken("views", "No view holds both landmarks of " + m.code());
      }
    }
    return outline;
  }

  private static Outline.View view(TableRow row) {
    return new Outline.View(
        row.text("key"),
        row.text(row.said("caption")),
        box(row),
        row.text("edge"),
        row.texts("lines"),
        row.rows("bands").stream()
            .map(band -> new Outline.Band(band.word("portion", Portion.class), box(band)))
            .toList());
  }

  private static Outline.Box box(TableRow row) {
    List<Double> b = row.numbers("box", 4);
    return new Outline.Box(b.get(0), b.get(1), b.get(2), b.get(3));
  }
}
