package org.comparanda.demo;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One invented animal: its size, and how each of its measurements deviates from what its size says.
 * Deviations are natural logs.
 */
final class SimulatedAnimal {
  private final DemoParameters parameters;
  private final String taxon;
  private final double size;
  private final Map<String, Double> deviations = new LinkedHashMap<>();
  private final Map<String, Double> leftOver = new LinkedHashMap<>();

  private SimulatedAnimal(DemoParameters parameters, String taxon, double size) {
    this.parameters = parameters;
    this.taxon = taxon;
    this.size = size;
  }

  /** An animal as the shelf holds them. */
  static SimulatedAnimal ofShelf(
      DemoParameters parameters, String taxon, boolean male, Draws draws) {
    double ratio = StrictMath.log(parameters.typical(taxon, "", "male", 1));
    double size = (male ? ratio / 2 : -ratio / 2) + parameters.sizeSpread(taxon) * draws.normal();
    return new SimulatedAnimal(parameters, taxon, size).deviate(draws, 1);
  }

  /** An ordinary animal of a given size (1 = its taxon's middle), for a bone on a tray. */
  static SimulatedAnimal ordinary(
      DemoParameters parameters, String taxon, double size, Draws draws) {
    return new SimulatedAnimal(parameters, taxon, StrictMath.log(size)).deviate(draws, 0.5);
  }

  private SimulatedAnimal deviate(Draws draws, double part) {
    for (String element : parameters.elements(taxon)) {
      for (String quantity : parameters.measurements(element)) {
        DemoParameters.Spread spread = parameters.spread(element, quantity);
        double whole = deviations.getOrDefault(element + "." + spread.follows(), 0.0);
        String key = element + "." + quantity;
        deviations.put(key, whole + part * spread.spread() * draws.normal());
        leftOver.put(key, part * spread.asymmetry() * draws.normal());
      }
    }
    for (String quantity : parameters.measurements("")) {
      deviations.put("." + quantity, parameters.spread("", quantity).spread() * draws.normal());
    }
    return this;
  }

  boolean has(String element, String quantity) {
    return parameters.has(taxon, element, quantity);
  }

  /** Value on one side, mm (g for a mass); {@code side} is left, right or axial. */
  double value(String element, String quantity, String side) {
    String key = element + "." + quantity;
    double asymmetry = leftOver.getOrDefault(key, 0.0);
    double lean =
        switch (side) {
          case "left" -> asymmetry;
          case "right" -> -asymmetry;
          default -> 0;
        };
    return parameters.typical(taxon, element, quantity, 0)
        * StrictMath.exp(
            parameters.spread(element, quantity).allometry() * size
                + deviations.getOrDefault(key, 0.0)
                + lean);
  }
}
