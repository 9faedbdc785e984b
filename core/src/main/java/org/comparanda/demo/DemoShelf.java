package org.comparanda.demo;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The simulated shelf: 168 animals of 12 taxa, one row a bone. */
final class DemoShelf {
  static final List<String> MEASUREMENTS =
      List.of(
          "GL", "GLC", "Bp", "DC", "SD", "Bd", "BT", "HTC", "GB", "ML", "TRL", "SYL", "MH", "BJ",
          "SCL", "SCW", "SH");
  private static final List<String> HEADER =
      List.of(
          "animal",
          "taxon",
          "element",
          "side",
          "portion",
          "sex",
          "age_class",
          "origin",
          "drawer",
          "flags",
          "remarks",
          "body_length [mm]",
          "body_mass [g]");
  private static final double MISSING = 0.06;
  private static final double BOTH_SIDES = 0.75;
  private static final List<String> UNMARKED = List.of("", "simulated");
  private static final Set<String> AXIAL = Set.of("carapace");

  private final DemoParameters parameters;
  private final Map<String, List<String>> marks = new HashMap<>();
  private final List<List<String>> rows = new ArrayList<>();

  private DemoShelf(DemoParameters parameters) {
    this.parameters = parameters;
    for (NamedCsvRecord plan : DemoTable.rows("plan.csv")) {
      if (plan.getField("tray").equals("shelf")) {
        marks.put(
            plan.getField("bone") + " " + plan.getField("side") + " " + plan.getField("element"),
            List.of(plan.getField("flags"), plan.getField("remarks")));
      }
    }
  }

  /** The text of {@code shelf.csv}. */
  static String csv(DemoParameters parameters, Draws draws) {
    DemoShelf shelf = new DemoShelf(parameters);
    int number = 101;
    int cabinet = 0;
    for (String taxon : parameters.taxa()) {
      Draws ofTaxon = draws.split();
      for (int i = 0; i < parameters.animals(taxon); i++) {
        String drawer = (char) ('A' + cabinet) + " " + (i / 8 + 1);
        shelf.addAnimal(
            taxon, String.format(Locale.ROOT, "HB-%04d", number), drawer, ofTaxon.split());
        number++;
      }
      cabinet++;
    }
    List<String> header = new ArrayList<>(HEADER);
    MEASUREMENTS.forEach(code -> header.add(code + " [mm]"));
    return DemoTable.write(header, shelf.rows);
  }

  private void addAnimal(String taxon, String number, String drawer, Draws draws) {
    boolean male = draws.chance(0.5);
    SimulatedAnimal animal = SimulatedAnimal.ofShelf(parameters, taxon, male, draws);
    boolean captive = draws.chance(parameters.typical(taxon, "", "captive", 0));
    List<String> animalCells =
        List.of(
            draws.chance(0.08) ? "" : male ? "male" : "female",
            "adult",
            captive ? "captive" : "wild",
            drawer);
    List<String> bodyCells =
        List.of(
            body(animal, "body_length", 0.10, draws),
            captive ? "" : body(animal, "body_mass", 0.30, draws));
    for (String element : parameters.elements(taxon)) {
      for (String side : sides(element, draws)) {
        List<String> row = new ArrayList<>(List.of(number, taxon, element, side, "whole"));
        row.addAll(animalCells);
        row.addAll(marks.getOrDefault(number + " " + side + " " + element, UNMARKED));
        row.addAll(bodyCells);
        for (String code : MEASUREMENTS) {
          boolean missing = draws.chance(MISSING);
          row.add(
              missing || !animal.has(element, code)
                  ? ""
                  : TypedNumber.tenths(animal.value(element, code, side)));
        }
        rows.add(row);
      }
    }
  }

  private static List<String> sides(String element, Draws draws) {
    if (AXIAL.contains(element)) {
      return List.of("axial");
    }
    if (draws.chance(BOTH_SIDES)) {
      return List.of("left", "right");
    }
    return List.of(draws.chance(0.5) ? "left" : "right");
  }

  private static String body(SimulatedAnimal animal, String quantity, double missing, Draws draws) {
    boolean absent = draws.chance(missing);
    if (absent || !animal.has("", quantity)) {
      return "";
    }
    double value = animal.value("", quantity, "axial");
    double step = quantity.equals("body_mass") ? 100 : 10;
    return String.valueOf((long) (StrictMath.floor(value / step + 0.5) * step));
  }
}
