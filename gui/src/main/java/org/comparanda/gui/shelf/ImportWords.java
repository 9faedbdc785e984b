package org.comparanda.gui.shelf;

import java.util.Comparator;
import java.util.List;
import org.comparanda.exchange.table.ProblemReport;
import org.comparanda.exchange.table.TableProblem;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.gui.shelf.ImportState.Stage;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.ImportedTable;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.SetDown;
import org.comparanda.register.TableIntake;

/** What is said of an import. */
record ImportWords(Words words) {
  /** A table with the same content was imported before. */
  ImportState known(ImportedTable before, String name) {
    String sentence =
        words.get("import.before", name, day(before.at()), before.file(), before.animals());
    return new ImportState(Stage.KNOWN, sentence, List.of());
  }

  /** An interrupted import has set animals down. */
  String setDown(String key, SetDown down) {
    return words.get(key, down.animals(), down.of(), day(down.at()), TableIntake.KEPT_DAYS);
  }

  private static String day(java.time.Instant at) {
    return at.toString().substring(0, 10);
  }

  /** All that is wrong with a table, by row. */
  ImportState refused(ProblemReport report) {
    List<TableProblem> byRow =
        report.problems().stream()
            .sorted(Comparator.comparingLong((TableProblem p) -> p.row().orElse(0L)))
            .toList();
    return new ImportState(Stage.REFUSED, words.said(report.lines().get(0)), byRow);
  }

  /** A table that can be added. */
  ImportState sound(TableRead<List<AnimalCard>> read) {
    String sentence =
        words.get("import.sound", read.content().size())
            + " "
            + words.said(read.facts().sentence());
    return new ImportState(Stage.SOUND, sentence, List.of());
  }
}
