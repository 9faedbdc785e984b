package org.comparanda.outside;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.comparanda.outside.OutsideTable.Row;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.Priors;

/**
 * One of the outside sets with known classes, as the outside programs used it: rows in file order,
 * values as stored, classes sorted by name, every row a unit of its own.
 */
public record OutsideSet(
    String name, List<String> ids, List<String> classes, List<String> variables, GroupedRows rows) {
  private static final List<String> PENGUIN =
      List.of("bill_length", "bill_depth", "flipper_length", "body_mass");
  private static final List<String> WOLF =
      List.of(
          "palatal_length",
          "postpalatal_length",
          "zygomatic_width",
          "palatal_width_outside_m1",
          "palatal_width_inside_m2",
          "postglenoid_foramina_width",
          "interorbital_width",
          "braincase_width",
          "crown_length");
  private static final List<String> VOLE =
      List.of("M1Left", "M2Left", "M3Left", "Foramen", "Pbone", "Length", "Height", "Rostrum");
  private static final List<String> MOUSE =
      List.of(
          "d12", "d13", "d14", "d15", "d16", "d23", "d24", "d25", "d26", "d34", "d35", "d36", "d45",
          "d46", "d56");

  /** The ten sets of c_*.csv. */
  public static List<String> names() {
    return List.of(
        "iris",
        "crabs",
        "penguins",
        "penguins_species_sex",
        "microtus_ref",
        "wolves_group",
        "wolves_location",
        "midge",
        "mouse_t2_5",
        "mouse_t2_15");
  }

  public static OutsideSet named(String name) {
    return switch (name) {
      case "iris" ->
          of(
              name,
              "iris",
              "species",
              List.of("sepal_length", "sepal_width", "petal_length", "petal_width"));
      case "crabs" -> of(name, "crabs", "group", List.of("FL", "RW", "CL", "CW", "BD"));
      case "penguins" -> of(name, "penguins", "species", PENGUIN);
      case "penguins_species_sex" ->
          of(
              name,
              OutsideTable.read("data/penguins.csv").where(row -> row.has("sex")),
              row -> row.text("species") + "_" + row.text("sex"),
              PENGUIN);
      case "microtus_ref" -> of(name, "microtus_reference", "species", VOLE);
      case "wolves_group" -> of(name, "wolves", "group", WOLF);
      case "wolves_location" -> of(name, "wolves", "location", WOLF);
      case "midge" -> of(name, "midge", "species", List.of("antenna_length", "wing_length"));
      case "mouse_t2_5" ->
          of(name, "mouse_t2_distances", "group", List.of("d12", "d16", "d23", "d45", "d56"));
      case "mouse_t2_15" -> of(name, "mouse_t2_distances", "group", MOUSE);
      default -> throw new AssertionError("no such set: " + name);
    };
  }

  public static OutsideSet of(String name, String file, String group, List<String> variables) {
    return of(name, OutsideTable.read("data/" + file + ".csv"), row -> row.text(group), variables);
  }

  /** Rows with a missing variable are left out, as complete.cases does. */
  public static OutsideSet of(
      String name, OutsideTable table, Function<Row, String> group, List<String> variables) {
    List<Row> complete = table.where(row -> variables.stream().allMatch(row::has)).rows();
    List<String> classes = complete.stream().map(group).distinct().sorted().toList();
    GroupedRows.Builder builder = GroupedRows.builder(variables.size(), classes.size());
    List<String> ids = new ArrayList<>();
    for (Row row : complete) {
      builder.add(classes.indexOf(group.apply(row)), ids.size(), values(row, variables));
      ids.add(row.cells().findField("id").orElse(Integer.toString(ids.size())));
    }
    return new OutsideSet(name, ids, classes, variables, builder.build());
  }

  public static double[] values(Row row, List<String> variables) {
    return variables.stream().mapToDouble(row::number).toArray();
  }

  /** "equal" or "proportional", as the tables call them. */
  public Priors priors(String prior) {
    return Map.of("equal", Priors.equal(classes.size()), "proportional", Priors.counts(rows))
        .get(prior);
  }

  public int row(String id) {
    return ids.indexOf(id);
  }

  public int group(String name) {
    return classes.indexOf(name);
  }

  public int[] columns(List<String> names) {
    return names.stream().mapToInt(variables::indexOf).toArray();
  }

  /** The same rows, each column times a factor of its own. */
  public GroupedRows scaled(double... factors) {
    GroupedRows.Builder builder = GroupedRows.builder(variables.size(), classes.size());
    for (int i = 0; i < rows.rows(); i++) {
      double[] x = rows.row(i);
      builder.add(
          rows.group(i),
          rows.unit(i),
          IntStream.range(0, x.length).mapToDouble(j -> x[j] * factors[j]).toArray());
    }
    return builder.build();
  }
}
