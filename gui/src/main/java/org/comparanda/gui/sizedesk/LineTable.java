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
    List<String> rows = new ArrayList<>();
    Stream<String> measured =
        Stream.concat(line.question().from().stream(), Stream.of(line.question().predict()));
    rows.add(
        row(
            Stream.of(
                    Stream.of("animal", "taxon", "drawer"),
                    measured.map(q -> q + unit(line, q)),
                    Stream.of("fitted", "residual", "leverage", "cooks_distance", "held_out_fit"))
                .flatMap(cells -> cells)));
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
                Stream.of(p.label(), Sheet.taxon(p), p.drawer().orElse("")),
                Stream.concat(p.x().stream(), Stream.of(p.y())).map(v -> Double.toString(v)),
                diagnostic(d))
            .flatMap(cells -> cells));
  }

  private static Stream<String> diagnostic(Optional<Diagnostics.Row> d) {
    return Stream.of(
        d.map(r -> Double.toString(r.fitted())).orElse(""),
        d.map(r -> Double.toString(r.residual())).orElse(""),
        d.map(r -> Double.toString(r.leverage())).orElse(""),
        d.flatMap(r -> r.cooksDistance().value()).map(v -> Double.toString(v)).orElse(""),
        d.flatMap(r -> r.heldOutFit().value()).map(v -> Double.toString(v)).orElse(""));
  }

  private static String row(Stream<String> cells) {
    return cells.map(LineTable::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    return cell.matches("(?s).*[\",\r\n].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }
}
