package org.comparanda.exchange.table;

import java.util.List;
import java.util.Optional;
import org.comparanda.check.BoneEntry;
import org.comparanda.check.Finding;
import org.comparanda.check.FindingKind;

/**
 * The rows of a table to be checked, and its cells that hold nothing readable.
 *
 * @param entries every row, without the values of such cells
 * @param unreadable those cells
 */
public record TableEntries(List<BoneEntry> entries, List<TableProblem> unreadable) {
  public TableEntries {
    entries = List.copyOf(entries);
    unreadable = List.copyOf(unreadable);
  }

  /** The unreadable cells as findings, each with its animal and bone where the row says them. */
  public List<Finding> findings() {
    return unreadable.stream().map(this::finding).toList();
  }

  private Finding finding(TableProblem problem) {
    long row = problem.row().orElse(0L);
    Optional<BoneEntry> entry = entries.stream().filter(e -> e.row() == row).findFirst();
    return new Finding(
        FindingKind.UNREADABLE,
        entry.map(BoneEntry::animal),
        entry.map(BoneEntry::bone),
        problem.column(),
        problem.value(),
        "Row %d, column %s holds \"%s\": %s."
            .formatted(
                row, problem.column().orElse(""), problem.value().orElse(""), problem.message()),
        problem.remedy());
  }
}
