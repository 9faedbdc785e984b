package org.comparanda.tray;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is recorded of a whole lot, or of one tray beside it.
 *
 * @param provenance where it was found, as recorded; empty when it isn't
 * @param hazards shown before the first bone; empty when none is known
 */
public record LotNotes(String provenance, String hazards) {
  /** Nothing is recorded. */
  public static LotNotes none() {
    return new LotNotes("", "");
  }

  /** These and what stands beside them; what is said twice is said once. */
  LotNotes with(LotNotes more) {
    return new LotNotes(joined(provenance, more.provenance), joined(hazards, more.hazards));
  }

  private static String joined(String first, String more) {
    return Stream.of(first, more)
        .map(String::strip)
        .filter(text -> !text.isEmpty())
        .filter(text -> text.equals(first.strip()) || !first.contains(text))
        .distinct()
        .collect(Collectors.joining("; "));
  }
}
