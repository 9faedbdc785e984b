package org.comparanda.house;

import org.comparanda.statistics.Outcome;

/** Repository of rights. */
public interface Grants {
  /** Who may do what now. */
  Rights rights();

  /** Appends a grant if {@link Rights#refusal} has nothing against it; else says why not. */
  Outcome<Grant> append(Grant grant);
}
