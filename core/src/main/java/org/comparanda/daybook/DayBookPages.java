package org.comparanda.daybook;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** The Day Book read page by page, so that a long one needs no more memory than a short one. */
public interface DayBookPages {
  /**
   * Entries, the newest first, without those that join the benches.
   *
   * @param from how many newer ones to pass over
   * @param most how many to give
   */
  DayBookPage page(DayBookFilter filter, long from, int most);

  /** Words that subjects begin with: "reading", "call". */
  List<String> kinds();

  /** Ids of the people whose names were kept once and are blanked now. */
  Set<String> blanked();

  /** The row that an entry is on as it is now, column to value; empty when it is gone. */
  Map<String, String> rowNow(String subject);
}
