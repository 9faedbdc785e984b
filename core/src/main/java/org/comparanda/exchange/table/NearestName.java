package org.comparanda.exchange.table;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known name that takes the fewest single-letter changes to reach (edit distance). */
final class NearestName {
  private NearestName() {}

  /** The nearest of the known names, upper and lower case alike; ties by the longer same start. */
  static Optional<String> to(String text, Collection<String> known) {
    return known.stream()
        .distinct()
        .min(
            Comparator.comparingInt((String name) -> distance(text, name))
                .thenComparingInt(name -> -sameStart(text, name))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** Whether one change of a letter makes one of the other. */
  static boolean oneLetterAway(String a, String b) {
    return letters(a, b) == 1;
  }

  private static int sameStart(String a, String b) {
    int n = 0;
    while (n < Math.min(a.length(), b.length()) && a.charAt(n) == b.charAt(n)) {
      n++;
    }
    return n;
  }

  private static int distance(String a, String b) {
    int folded = letters(a.toLowerCase(Locale.ROOT), b.toLowerCase(Locale.ROOT));
    return 2 * folded + (a.equals(b) ? 0 : 1);
  }

  private static int letters(String a, String b) {
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1], above[j]) + 1, above[j - 1] + change);
      }
      above = row;
    }
    return above[b.length()];
  }
}
