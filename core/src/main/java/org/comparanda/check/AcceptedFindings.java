package org.comparanda.check;

import java.util.List;

/** Repository of the findings that were accepted. */
public interface AcceptedFindings {
  /** All of them, oldest first. */
  List<AcceptedFinding> all();

  /** Remembers one more. */
  void accept(AcceptedFinding finding);
}
