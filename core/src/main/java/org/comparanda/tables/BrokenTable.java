package org.comparanda.tables;

/**
 * A file of the reference tables that cannot be used. The message names file, row and field, quotes
 * what stands there and says what to do.
 */
public final class BrokenTable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BrokenTable(String place, String what) {
    super(
        what
            + " ("
            + place
            + "). None of the reference tables was used. Correct that field and start again.");
  }
}
