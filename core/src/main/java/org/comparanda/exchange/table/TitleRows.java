package org.comparanda.exchange.table;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Lines of title that stand above the header of a table. They are suspected where the first row is
 * no header by its words and a later one is; or where it fills one cell only and a later one three
 * or more.
 *
 * @param headerRow where the header seems to stand, counted as a spreadsheet counts
 */
record TitleRows(long headerRow) {
  private static final int LOOKED_AT = 10;
  private static final int ENOUGH = 2;
  private static final int WIDE = 3;

  /** None where the row was told, or nothing speaks for it. */
  static Optional<TitleRows> above(
      RowSource source,
      List<String> header,
      TableOptions options,
      KnownWords known,
      Map<String, List<String>> words)
      throws IOException {
    if (options.headerRow().isPresent() || knownWords(header, options, known, words) > 0) {
      return Optional.empty();
    }
    List<SortedMap<Long, List<String>>> tops = source.tops(LOOKED_AT);
    Optional<TitleRows> byWords =
        tops.stream()
            .flatMap(top -> top.entrySet().stream())
            .filter(row -> knownWords(row.getValue(), options, known, words) >= ENOUGH)
            .findFirst()
            .map(row -> new TitleRows(row.getKey()));
    if (byWords.isPresent() || filled(header) > 1) {
      return byWords;
    }
    return tops.get(0).entrySet().stream()
        .filter(row -> filled(row.getValue()) >= WIDE)
        .findFirst()
        .map(row -> new TitleRows(row.getKey()));
  }

  private static long knownWords(
      List<String> row, TableOptions options, KnownWords known, Map<String, List<String>> words) {
    long mapped = row.stream().filter(options.as()::containsValue).count();
    TableOptions.Shape either = TableOptions.Shape.LONG;
    return mapped
        + new ColumnGuesses(known, words, either)
            .of(row).stream()
                .filter(
                    g ->
                        g.why() == ColumnGuess.Why.SAME_NAME
                            || g.why() == ColumnGuess.Why.ANOTHER_WORD)
                .count();
  }

  private static long filled(List<String> row) {
    return row.stream().filter(cell -> !cell.isBlank()).count();
  }

  String sentence() {
    return "the header seems to stand in row " + headerRow + ", below a title";
  }

  String remedy() {
    return "Say --header-row " + headerRow + " if it does, or the row in which it stands.";
  }
}
