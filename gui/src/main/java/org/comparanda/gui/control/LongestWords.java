package org.comparanda.gui.control;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/**
 * The longest word of each column of a table. A row is read once: a table of thousands of rows that
 * is searched letter by letter changes its list with every letter, never its rows.
 */
final class LongestWords<T> {
  private final TableView<T> table;
  private final IdentityHashMap<T, List<String>> ofRows = new IdentityHashMap<>();
  private int most;

  LongestWords(TableView<T> table) {
    this.table = table;
  }

  /** One word a column, in the order of the columns; empty where a column has none. */
  List<String> now() {
    List<T> rows = table.getItems();
    most = Math.max(most, rows.size());
    if (ofRows.size() > 2 * most) {
      ofRows.clear(); // rows of lists that are gone
    }
    int columns = table.getColumns().size();
    List<String> longest = new ArrayList<>(IntStream.range(0, columns).mapToObj(i -> "").toList());
    for (int row = 0; row < rows.size(); row++) {
      int number = row;
      List<String> words = ofRows.computeIfAbsent(rows.get(row), r -> read(number));
      for (int i = 0; i < columns; i++) {
        longest.set(i, longer(longest.get(i), words.get(i)));
      }
    }
    return longest;
  }

  private List<String> read(int row) {
    return table.getColumns().stream().map(column -> longest(column, row)).toList();
  }

  private static String longest(TableColumn<?, ?> column, int row) {
    String longest = "";
    for (String word : String.valueOf(column.getCellData(row)).split("\\s+", -1)) {
      longest = longer(longest, word);
    }
    return longest;
  }

  private static String longer(String one, String other) {
    return other.length() > one.length() ? other : one;
  }
}
