package org.comparanda.statistics.robust;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.comparanda.outside.OutsideTable;

/** The outside sets as j-outlier.R took them. */
final class RobustSet {
  private final List<String> ids;
  private final List<double[]> rows;

  private RobustSet(
      OutsideTable table, String id, ToDoubleFunction<Double> scale, String... columns) {
    ids = table.rows().stream().map(r -> r.text(id)).toList();
    rows =
        table.rows().stream()
            .map(
                r ->
                    Arrays.stream(columns)
                        .mapToDouble(c -> scale.applyAsDouble(r.number(c)))
                        .toArray())
            .toList();
  }

  List<String> ids() {
    return ids;
  }

  List<double[]> rows() {
    return rows;
  }

  static RobustSet named(String name) {
    return switch (name) {
      case "animals_log10" ->
          new RobustSet(data("animals"), "name", Math::log10, "body_kg", "brain_g");
      case "iris_virginica" ->
          new RobustSet(
              data("iris").where("species", "virginica"),
              "id",
              x -> x,
              "sepal_length",
              "sepal_width",
              "petal_length",
              "petal_width");
      case "penguins_adelie" ->
          new RobustSet(
              data("penguins").where("species", "Adelie").where(r -> r.has("bill_length")),
              "id",
              x -> x,
              "bill_length",
              "bill_depth",
              "flipper_length",
              "body_mass");
      case "crabs_BF_log" ->
          new RobustSet(
              data("crabs").where("group", "BF"), "id", Math::log, "FL", "RW", "CL", "CW", "BD");
      case "wolves_all_3" ->
          new RobustSet(
              data("wolves"),
              "id",
              x -> x,
              "palatal_length",
              "zygomatic_width",
              "interorbital_width");
      default -> throw new IllegalArgumentException(name);
    };
  }

  static List<Double> sample(String name) {
    return switch (name) {
      case "corvus_wing" -> column(data("corvus"), "wing_mm");
      case "corvus_bill" -> column(data("corvus"), "bill_mm");
      case "tortues_M_length" -> column(data("tortues").where("sex", "M"), "length_mm");
      case "tortues_F_height" -> column(data("tortues").where("sex", "F"), "height_mm");
      case "animals_log10_brain_per_body" ->
          data("animals").rows().stream()
              .map(r -> Math.log10(r.number("brain_g")) - 0.75 * Math.log10(r.number("body_kg")))
              .toList();
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static List<Double> column(OutsideTable table, String column) {
    return table.rows().stream().map(r -> r.number(column)).toList();
  }

  private static OutsideTable data(String name) {
    return OutsideTable.read("data/" + name + ".csv");
  }
}
