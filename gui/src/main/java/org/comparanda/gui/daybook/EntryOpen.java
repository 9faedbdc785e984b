package org.comparanda.gui.daybook;

import java.util.Map;

/**
 * The chosen entry and its row.
 *
 * @param row the row as it is now, column to value; empty when it is gone
 */
public record EntryOpen(EntryLine line, Map<String, String> row) {
  public EntryOpen {
    row = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(row));
  }
}
