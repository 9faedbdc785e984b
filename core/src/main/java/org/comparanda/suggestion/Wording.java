package org.comparanda.suggestion;

import java.util.List;
import java.util.Locale;
import org.comparanda.taxon.TaxonName;

/** Small pieces of plain sentences, the same in every answer. */
final class Wording {
  private Wording() {}

  /** "A", "A or B", "A, B or C". */
  static String either(List<String> items) {
    return joined(items, " or ");
  }

  /** "A", "A and B", "A, B and C". */
  static String all(List<String> items) {
    return joined(items, " and ");
  }

  static List<String> names(List<TaxonName> taxa) {
    return taxa.stream().map(TaxonName::value).toList();
  }

  /** "1 animal", "47 animals". */
  static String count(int n, String thing) {
    return n + " " + thing + (n == 1 ? "" : "s");
  }

  /** A part of 1 as whole per cents, without the sign: 0.674 is "67". */
  static String percent(double part) {
    return String.valueOf(Math.round(100 * part));
  }

  /** A reading with one digit behind the point. */
  static String reading(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String joined(List<String> items, String last) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    int end = items.size() - 1;
    return String.join(", ", items.subList(0, end)) + last + items.get(end);
  }
}
