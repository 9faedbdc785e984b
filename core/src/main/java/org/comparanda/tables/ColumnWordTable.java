package org.comparanda.tables;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Reads the other words by which columns of tables are headed. */
public final class ColumnWordTable {
  private ColumnWordTable() {}

  /** The words packed with the program, by what they mean. Errors: {@link BrokenTable}. */
  public static Map<String, List<String>> shipped() {
    return read(TableFile.shipped("column-words.json"));
  }

  static Map<String, List<String>> read(TableFile file) {
    List<TableRow> rows = file.rows("words");
    ProtocolTables.requireOnce(rows, "role");
    Map<String, List<String>> words = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (TableRow row : rows) {
      row.text("source");
      for (String word : row.texts("words")) {
        if (!seen.add(word.toLowerCase(Locale.ROOT))) {
          throw row.broken("words", "\"" + word + "\" stands twice");
        }
      }
      words.put(row.text("role"), row.texts("words"));
    }
    return words;
  }
}
