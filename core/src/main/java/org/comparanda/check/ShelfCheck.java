package org.comparanda.check;

import java.util.List;

/** One question about the shelf. Changes nothing and never throws on bad data. */
public interface ShelfCheck {
  /** What it answers for. */
  FindingKind kind();

  /** Findings in the order of the rows. */
  List<Finding> check(ShelfEntries entries);
}
