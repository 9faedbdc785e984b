package org.comparanda.suggestion;

import org.comparanda.taxon.TaxonName;

/**
 * A name with its sign of openness, proposed to the person and never applied.
 *
 * @param taxon the taxon or group
 * @param sign how open the name should stay
 */
public record ProposedName(TaxonName taxon, Sign sign) {
  /** Signs of open nomenclature that a suggestion may propose. */
  public enum Sign {
    NONE,
    CF,
    INDET
  }

  /** The name as written: "Ovis aries", "Ovis cf. aries", "cf. Ovis", "Caprini indet.". */
  public String written() {
    return switch (sign) {
      case NONE -> taxon.value();
      case INDET -> taxon.value() + " indet.";
      case CF -> {
        int blank = taxon.value().indexOf(' ');
        yield blank < 0
            ? "cf. " + taxon.value()
            : taxon.value().substring(0, blank) + " cf." + taxon.value().substring(blank);
      }
    };
  }
}
