package org.comparanda.gui.bench;

import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Qualifier;

/** Names as open nomenclature writes them. */
final class Written {
  private Written() {}

  /** "Ovis aries", "Ovis cf. aries", "cf. Ovis", "Ovis sp.", "Caprini indet.", "? Ovis aries". */
  static String name(TaxonName taxon, Qualifier qualifier) {
    String name = taxon.value();
    int blank = name.indexOf(' ');
    return switch (qualifier) {
      case NONE -> name;
      case CF, AFF ->
          blank < 0
              ? qualifier.sign() + " " + name
              : name.substring(0, blank) + " " + qualifier.sign() + name.substring(blank);
      case SP, INDET -> name + " " + qualifier.sign();
      case UNCERTAIN -> qualifier.sign() + " " + name;
    };
  }
}
