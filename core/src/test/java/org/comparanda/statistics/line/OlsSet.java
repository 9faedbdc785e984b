package org.comparanda.statistics.line;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.comparanda.outside.OutsideTable;

/** The nine outside sets of straight lines, as scripts/a-ols.R of the source picked them. */
enum OlsSet {
  ANIMALS_ALL("animals", "body_kg", "brain_g"),
  ANIMALS_NODINO("animals", "body_kg", "brain_g") {
    @Override
    boolean takes(OutsideTable.Row row) {
      return !List.of("Dipliodocus", "Triceratops", "Brachiosaurus").contains(row.text("name"));
    }
  },
  MAMMALS("mammals", "body_kg", "brain_g"),
  TORTUES_LEN_WID("tortues", "width_mm", "length_mm"),
  TORTUES_LEN_HT_F("tortues", "height_mm", "length_mm") {
    @Override
    boolean takes(OutsideTable.Row row) {
      return row.text("sex").equals("F");
    }
  },
  TORTUES_LEN_HT_M("tortues", "height_mm", "length_mm") {
    @Override
    boolean takes(OutsideTable.Row row) {
      return row.text("sex").equals("M");
    }
  },
  CARNI70("carni70_traits", "size_kg", "range_km"),
  PENGUINS("penguins", "flipper_length", "body_mass"),
  CORVUS("corvus", "bill_mm", "wing_mm");

  private final String file;
  private final String x;
  private final String y;

  OlsSet(String file, String x, String y) {
    this.file = file;
    this.x = x;
    this.y = y;
  }

  static OlsSet named(String set) {
    for (OlsSet s : values()) {
      if (s.name().equalsIgnoreCase(set)) {
        return s;
      }
    }
    throw new IllegalArgumentException(set);
  }

  boolean takes(OutsideTable.Row row) {
    return true;
  }

  List<OutsideTable.Row> rows() {
    return OutsideTable.read("data/" + file + ".csv")
        .where(row -> row.has(x) && row.has(y))
        .where(this::takes)
        .rows();
  }

  Design design(String scale) {
    return Design.of(
        rows().stream().mapToDouble(r -> forward(scale, r.number(x))).toArray(),
        rows().stream().mapToDouble(r -> forward(scale, r.number(y))).toArray());
  }

  double[] rawY() {
    return rows().stream().mapToDouble(r -> r.number(y)).toArray();
  }

  LeastSquaresFit fit(String scale) {
    return LeastSquares.withIntercept().fit(design(scale)).value().orElseThrow();
  }

  static double forward(String scale, double value) {
    return switch (scale) {
      case "log10" -> Math.log10(value);
      case "ln" -> Math.log(value);
      default -> value;
    };
  }

  static DoubleUnaryOperator antilog(String scale) {
    return switch (scale) {
      case "log10" -> z -> Math.pow(10, z);
      case "ln" -> Math::exp;
      default -> z -> z;
    };
  }
}
