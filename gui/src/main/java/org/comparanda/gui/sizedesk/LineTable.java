package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.statistics.line.Diagnostics;

/**
 * The animals behind a line as CSV (RFC 4180), full precision, own units (mm, g); residual, fit and
 * held-out fit on the scale of the fit.
 */
final class LineTable {
  private LineTable() {}

  static String csv(FittedLine line) {
    String from = line.question().from().get(0);
    List<String> rows = new ArrayList<>();
    rows.add(
        row(
            Stream.of(
                "animal",
                "taxon",
                "drawer",
                from + unit(line, from),
                line.question().predict() + unit(line, line.question().predict()),
                "fitted",
                "residual",
                "leverage",
                "cooks_distance",
                "held_out_fit")));
    List<Diagnostics.Row> diagnostics =
        line.diagnostics().fold(Diagnostics::rows, none -> List.of());
    for (int i = 0; i < line.points().size(); i++) {
      Optional<Diagnostics.Row> d =
          i < diagnostics.size() ? Optional.of(diagnostics.get(i)) : Optional.empty();
      rows.add(row(line.points().get(i), d));
    }
    return String.join("\r\n", rows) + "\r\n";
  }

  private static String unit(FittedLine line, String quantity) {
    String unit =
        quantity.equals(line.question().predict())
            ? line.unit()
            : quantity.equals(Quantities.BODY_MASS) ? "g" : "mm";
    return unit.isEmpty() ? "" : " [" + unit + "]";
  }

  private static String row(LinePoint p, Optional<Diagnostics.Row> d) {
    return row(
        Stream.of(
            p.label(),
            Sheet.taxon(p),
            p.drawer().orElse(""),
            Double.toString(p.x().get(0)),
            Double.toString(p.y()),
            d.map(r -> Double.toString(r.fitted())).orElse(""),
            d.map(r -> Double.toString(r.residual())).orElse(""),
            d.map(r -> Double.toString(r.leverage())).orElse(""),
            d.flatMap(r -> r.cooksDistance().value()).map(v -> Double.toString(v)).orElse(""),
            d.flatMap(r -> r.heldOutFit().value()).map(v -> Double.toString(v)).orElse("")));
  }

  private static String row(Stream<String> cells) {
    return cells.map(LineTable::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    return cell.matches("(?s).*[\",\r\n].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }
}
