package org.comparanda.statistics.phylo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.line.Design;

/** The four outside sets on trees, picked as scripts/h-phylo.R of the source did. */
enum OutsideTree {
  GEOSPIZA_CULMEN_ON_WING("geospiza", "wingL", "culmenL"),
  GEOSPIZA_BEAKDEPTH_ON_TARSUS("geospiza", "tarsusL", "beakD"),
  MAMMAL49_HOME_RANGE_ON_MASS("mammal49", "body_mass_kg", "home_range_km2"),
  CARNI70_RANGE_ON_SIZE("carni70", "size_kg", "range_km");

  private final String file;
  private final String x;
  private final String y;

  OutsideTree(String file, String x, String y) {
    this.file = file;
    this.x = x;
    this.y = y;
  }

  static OutsideTree named(String set) {
    for (OutsideTree s : values()) {
      if (s.name().equalsIgnoreCase(set)) {
        return s;
      }
    }
    throw new IllegalArgumentException(set);
  }

  PhyloTree tree() {
    var stream =
        Objects.requireNonNull(
            OutsideTree.class.getResourceAsStream("/outside/data/" + file + "_tree.nwk"));
    try (stream) {
      return Newick.read(new String(stream.readAllBytes(), StandardCharsets.UTF_8))
          .value()
          .orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  TipCovariance covariance() {
    return TipCovariance.of(tree(), tree().tips()).value().orElseThrow();
  }

  Map<String, Double> x() {
    return column(x);
  }

  Map<String, Double> y() {
    return column(y);
  }

  Design means() {
    List<String> tips = tree().tips();
    return Design.of(
        tips.stream().mapToDouble(t -> Objects.requireNonNull(x().get(t))).toArray(),
        tips.stream().mapToDouble(t -> Objects.requireNonNull(y().get(t))).toArray());
  }

  private Map<String, Double> column(String column) {
    Map<String, Double> values = new HashMap<>();
    for (OutsideTable.Row row : OutsideTable.read("data/" + file + "_traits.csv").rows()) {
      double value = row.number(column);
      values.put(row.text("species"), file.equals("geospiza") ? value : Math.log10(value));
    }
    return values;
  }
}
