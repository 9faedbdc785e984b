package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.SetAside;
import org.comparanda.taxon.TaxonName;

/**
 * Reads which taxa cannot occur here: a table with the columns {@code taxon} and {@code reason}.
 */
public final class SetAsideTable {
  private SetAsideTable() {}

  /** The taxa with their reasons; or which row is wrong. */
  public static Outcome<List<SetAside>> read(Path path) {
    ProblemList problems = new ProblemList(String.valueOf(path.getFileName()));
    List<SetAside> all = new ArrayList<>();
    try {
      Optional<RowSource> opened =
          TableOpening.rows(path, Optional.empty(), ReadingProgress.unwatched(), problems);
      if (opened.isPresent()) {
        RowSource file = opened.get();
        int taxon = file.header().indexOf("taxon");
        int reason = file.header().indexOf("reason");
        if (taxon < 0 || reason < 0) {
          problems.row(1, "the columns taxon and reason are needed", "Head the columns so.");
        } else {
          file.eachRow(
              problems,
              (row, cells) ->
                  take(row, cells.get(taxon).text(), cells.get(reason).text(), all, problems));
        }
      }
    } catch (IOException unreadable) {
      problems.file("the file can't be read", "Check the name and the folder.");
    }
    return problems.isEmpty()
        ? Outcome.of(List.copyOf(all))
        : Outcome.none(
            String.join("\n", problems.report().lines()),
            "Correct the list of taxa set aside and start again.");
  }

  private static void take(
      long row, String taxon, String reason, List<SetAside> all, ProblemList problems) {
    if (taxon.isEmpty()) {
      problems.column(row, "taxon", "the taxon is missing", "Fill the cell.");
    } else if (reason.isEmpty()) {
      problems.column(row, "reason", "the reason is missing", "Say why it cannot occur here.");
    } else {
      all.add(new SetAside(new TaxonName(taxon), reason));
    }
  }
}
