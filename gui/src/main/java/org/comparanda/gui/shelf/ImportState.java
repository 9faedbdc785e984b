package org.comparanda.gui.shelf;

import java.util.List;
import org.comparanda.exchange.table.TableProblem;
import org.comparanda.exchange.table.TableProblem.Answer.Register;
import org.comparanda.exchange.table.TableProblem.Answer.SayUnit;

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
    WRITING,
    STOPPED,
    ADDED
  }

  static ImportState none() {
    return new ImportState(Stage.NONE, "", List.of());
  }

  boolean running() {
    return stage == Stage.READING || stage == Stage.WRITING;
  }

  /** The columns that look like another unit. */
  List<SayUnit> unitQuestions() {
    return problems.stream()
        .flatMap(p -> p.answer().stream())
        .filter(SayUnit.class::isInstance)
        .map(SayUnit.class::cast)
        .toList();
  }

  /** Whether names are unknown that the table may bring. */
  boolean namesAreUnknown() {
    return problems.stream()
        .anyMatch(p -> p.answer().filter(Register.class::isInstance).isPresent());
  }
}
