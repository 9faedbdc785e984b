package org.comparanda.statistics.line;

import java.util.List;
import org.comparanda.outside.OutsideTable;

/**
 * The outside sets of expected/b_line_fits.csv, picked as scripts/b-linefit.R of the source did.
 */
final class AxisSet {
  private AxisSet() {}

  static Design named(String set) {
    String[] word = set.split("_", -1);
    String last = word[word.length - 1];
    String scale = last.equals("width") ? "none" : last;
    return switch (word[0]) {
      case "animals", "mammals" -> design(rows(word[0]), "body_kg", "brain_g", scale);
      case "tortues" ->
          scale.equals("none")
              ? design(rows("tortues"), "width_mm", "length_mm", scale)
              : design(
                  word[1].equals("len") ? rows("tortues") : rows("tortues").where("sex", word[1]),
                  "height_mm",
                  "length_mm",
                  scale);
      case "crabs" -> design(rows("crabs").where("group", word[1]), word[4], word[2], scale);
      case "corvus" ->
          design(
              word[1].equals("wing") ? rows("corvus") : rows("corvus").where("habitat", word[1]),
              "bill_mm",
              "wing_mm",
              scale);
      default -> design(rows("carni70_traits"), "size_kg", "range_km", scale);
    };
  }

  private static OutsideTable rows(String file) {
    return OutsideTable.read("data/" + file + ".csv");
  }

  private static Design design(OutsideTable table, String x, String y, String scale) {
    List<OutsideTable.Row> rows = table.rows();
    return Design.of(
        rows.stream().mapToDouble(r -> OlsSet.forward(scale, r.number(x))).toArray(),
        rows.stream().mapToDouble(r -> OlsSet.forward(scale, r.number(y))).toArray());
  }
}
