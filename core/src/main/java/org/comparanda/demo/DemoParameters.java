package org.comparanda.demo;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The parameter table of the demo ({@code parameters.csv}). Rows of taxon {@code *} say how a
 * quantity varies in every taxon; the other rows give a taxon's typical values.
 */
final class DemoParameters {
  private final Map<String, Spread> spreads = new LinkedHashMap<>();
  private final Map<String, Map<String, Double>> typical = new LinkedHashMap<>();
  private final Map<String, Double> sizeSpread = new LinkedHashMap<>();

  /**
   * How a quantity varies.
   *
   * @param allometry exponent against the size of the animal
   * @param spread standard deviation of its natural log at one size
   * @param asymmetry standard deviation of the log of half a left–right difference
   * @param follows the quantity it is a part of, or empty: then it also takes over its deviation
   */
  record Spread(double allometry, double spread, double asymmetry, String follows) {}

  static DemoParameters shipped() {
    return new DemoParameters(DemoTable.rows("parameters.csv"));
  }

  private DemoParameters(List<NamedCsvRecord> rows) {
    for (NamedCsvRecord row : rows) {
      String key = key(row.getField("element"), row.getField("quantity"));
      String taxon = row.getField("taxon");
      if (taxon.equals("*") && !key.equals(".")) {
        spreads.put(
            key,
            new Spread(
                number(row, "allometry"),
                number(row, "spread"),
                number(row, "asymmetry"),
                row.getField("follows")));
      } else if (!taxon.equals("*")) {
        typical.computeIfAbsent(taxon, t -> new LinkedHashMap<>()).put(key, number(row, "typical"));
        if (key.equals(".size")) {
          sizeSpread.put(taxon, number(row, "spread"));
        }
      }
    }
  }

  /** The taxa in the order of the table, the ones that are not on the shelf included. */
  Set<String> taxa() {
    return typical.keySet();
  }

  /** Number of animals on the shelf. */
  int animals(String taxon) {
    return (int) typical(taxon, "", "animals", 0);
  }

  /** Standard deviation of the natural log of size between animals of one sex. */
  double sizeSpread(String taxon) {
    return sizeSpread.getOrDefault(taxon, 0.0);
  }

  /** A typical value, or another number where the table has none. */
  double typical(String taxon, String element, String quantity, double otherwise) {
    return of(taxon).getOrDefault(key(element, quantity), otherwise);
  }

  boolean has(String taxon, String element, String quantity) {
    return of(taxon).containsKey(key(element, quantity));
  }

  /** The elements that a taxon has values for, in the order of the table. */
  Set<String> elements(String taxon) {
    Set<String> elements = new LinkedHashSet<>();
    for (String key : of(taxon).keySet()) {
      if (!key.startsWith(".")) {
        elements.add(key.substring(0, key.indexOf('.')));
      }
    }
    return elements;
  }

  /** The measurements that vary in an element, in the order of the table. */
  List<String> measurements(String element) {
    return spreads.keySet().stream()
        .filter(k -> k.startsWith(element + "."))
        .map(k -> k.substring(element.length() + 1))
        .toList();
  }

  Spread spread(String element, String quantity) {
    Spread spread = spreads.get(key(element, quantity));
    if (spread == null) {
      throw new IllegalArgumentException(
          "parameters.csv has no row * for " + key(element, quantity) + ".");
    }
    return spread;
  }

  private Map<String, Double> of(String taxon) {
    return typical.getOrDefault(taxon, Map.of());
  }

  private static String key(String element, String quantity) {
    return element + "." + quantity;
  }

  private static double number(NamedCsvRecord row, String field) {
    String text = row.getField(field);
    return text.isEmpty() ? 0 : Double.parseDouble(text);
  }
}
