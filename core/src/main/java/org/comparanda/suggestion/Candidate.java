package org.comparanda.suggestion;

import org.comparanda.taxon.TaxonName;

/** A taxon of the set C of the answer rules, and how it came in. */
record Candidate(TaxonName taxon, Mark mark) {
  /** How a candidate came in. */
  enum Mark {
    /** Good typicality and some share. */
    FITS,
    /** Typicality below the bar of a good fit, but with a share that cannot be passed over. */
    POOR_FIT,
    /** Nothing else was left: best typicality, or next in share beside a lone candidate. */
    NEXT_BEST
  }
}
