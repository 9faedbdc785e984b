package org.comparanda.suggestion;

import org.comparanda.taxon.TaxonName;

/**
 * A taxon whose typicality on all readings taken is below the drawer's threshold.
 *
 * @param sentence which measurement adds most to the distance, and the range only where true
 * @param standing ruled out, or too few animals to rule out
 */
public record DrawerEntry(TaxonName taxon, String sentence, Standing standing) {
  /** Why it lies there. */
  public enum Standing {
    RULED_OUT,
    TOO_FEW_TO_RULE_OUT
  }
}
