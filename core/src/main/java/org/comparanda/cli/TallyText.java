package org.comparanda.cli;

import org.comparanda.tally.ElementTally;
import org.comparanda.tally.PlaceTally;
import org.comparanda.tally.TaxonTally;

/** Tallies as plain text. */
record TallyText(Terminal terminal) {
  void write(PlaceTally place) {
    terminal.say("Place: " + (place.place().isBlank() ? "not said" : place.place()));
    for (TaxonTally taxon : place.taxa()) {
      terminal.say("  %s: NISP %d, MNI %d".formatted(taxon.taxon(), taxon.nisp(), taxon.mni()));
      for (ElementTally element : taxon.elements()) {
        String mau =
            element
                .mau()
                .fold(
                    value ->
                        Figures.five(value)
                            + " ("
                            + taxon.percentMau(element).fold(Figures::five, n -> "")
                            + " %)",
                    none -> "not known");
        terminal.say(
            "    %s: NISP %d, MNE %d, MAU %s"
                .formatted(element.element(), element.nisp(), element.mne(), mau));
      }
      taxon.steps().forEach(step -> terminal.say("    - " + step));
    }
  }

  void closing() {
    terminal.say(
        "MNI holds within one place and is never added up; counts are at best ranks of abundance.");
  }
}
