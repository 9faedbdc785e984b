package org.comparanda.gui.shelf;

import java.util.List;
import org.comparanda.exchange.table.TableProblem;

/**
 * How far an import is.
 *
 * @param stage which step
 * @param sentence what is to be said of it
 * @param problems all that is wrong with the table, when it was refused
 */
public record ImportState(Stage stage, String sentence, List<TableProblem> problems) {
  public ImportState {
    problems = List.copyOf(problems);
  }

  /** The steps; nothing is stored before the person presses the button at {@link #SOUND}. */
  public enum Stage {
    NONE,
    READING,
    REFUSED,
    SOUND,
    ADDED
  }

  static ImportState none() {
    return new ImportState(Stage.NONE, "", List.of());
  }
}
