package org.comparanda.gui.shelf;

import java.util.List;
import java.util.Optional;
import org.comparanda.exchange.table.TableProblem;
import org.comparanda.exchange.table.TableProblem.Answer.Register;
import org.comparanda.exchange.table.TableProblem.Answer.SaySheet;
import org.comparanda.exchange.table.TableProblem.Answer.SayUnit;

/**
 * How far an import is.
 *
 * @param stage which step
 * @param sentence what is to be said of it
 * @param problems all that is wrong with the table, when it was refused
 * @param mapping what is asked of its columns, at {@link Stage#MAPPING}
 * @param begun what an interrupted import has set down, in words, at {@link Stage#SOUND}
 */
public record ImportState(
    Stage stage,
    String sentence,
    List<TableProblem> problems,
    Optional<MappingQuestion> mapping,
    Optional<String> begun) {
  public ImportState {
    problems = List.copyOf(problems);
  }

  /** The steps; nothing is stored before the person presses the button at {@link #SOUND}. */
  public enum Stage {
    NONE,
    MAPPING,
    READING,
    REFUSED,
    /** A table with the same content was imported before. */
    KNOWN,
    SOUND,
    WRITING,
    STOPPED,
    ADDED
  }

  ImportState(Stage stage, String sentence, List<TableProblem> problems) {
    this(stage, sentence, problems, Optional.empty(), Optional.empty());
  }

  static ImportState asking(String sentence, MappingQuestion question) {
    return new ImportState(
        Stage.MAPPING, sentence, List.of(), Optional.of(question), Optional.empty());
  }

  ImportState begun(Optional<String> words) {
    return new ImportState(stage, sentence, problems, mapping, words);
  }

  static ImportState none() {
    return new ImportState(Stage.NONE, "", List.of());
  }

  /** The sheets of the workbook, one of which is to be named. */
  List<String> sheets() {
    return problems.stream()
        .flatMap(p -> p.answer().stream())
        .filter(SaySheet.class::isInstance)
        .flatMap(a -> ((SaySheet) a).sheets().stream())
        .toList();
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
