package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.CancellationException;

/**
 * The rows of one table, streamed, wherever they stand. Rows are counted as a spreadsheet counts
 * them; blank ones are passed over but counted.
 */
interface RowSource {
  /** Receives each row below the header, as many cells as the header has. */
  interface RowVisitor {
    void row(long number, List<Cell> cells);
  }

  /** How the table is laid out, in words. */
  String layout();

  /** The same rows, watched. */
  RowSource watchedBy(ReadingProgress progress);

  /** The same rows, the header in this row and nothing read above it. */
  RowSource from(long headerRow) throws IOException;

  /**
   * The first rows that aren't blank, whole, by their number: what a person would look at. Where
   * cells could be parted in several ways, each of them, the likeliest first.
   */
  List<SortedMap<Long, List<String>>> tops(int most) throws IOException;

  /** The header row, or none when nothing can be read. */
  List<String> header() throws IOException;

  /** Visits all rows below the header; a row that can't be read is a problem. */
  void eachRow(ProblemList problems, RowVisitor visitor) throws IOException;

  /** Asked between rows. */
  static void goOnOrStop(ReadingProgress progress, Path path) {
    if (progress.cancelled()) {
      throw new CancellationException(
          path.getFileName() + " was not read to its end: stopped. Nothing of it was stored.");
    }
  }
}
