package org.comparanda.gui.app;

import org.comparanda.gui.oldcards.OldCardsViewModel;
import org.comparanda.gui.pile.PileViewModel;
import org.comparanda.gui.shelf.ShelfViewModel;
import org.comparanda.gui.tray.TrayView;
import org.comparanda.reference.AnimalId;
import org.comparanda.tray.Search;

/** Leads from what was found to the screen where it stands. */
record Found(ShelfViewModel shelf, OldCardsViewModel cards, PileViewModel pile) {
  /** The Tray, whose search leads to the other screens. */
  TrayView from(TrayView tray) {
    tray.setOnElsewhere(hit -> lead(hit, tray));
    return tray;
  }

  private void lead(Search.Hit hit, TrayView from) {
    switch (hit.opens()) {
      case ANIMAL -> Screens.show(new AnimalId(hit.key()), shelf, from);
      case OLD_CARD -> {
        cards.seek(Long.parseLong(hit.key()));
        Screens.turnTo("oldcards", from);
      }
      case ARRIVAL -> {
        pile.seek(hit.key());
        Screens.turnTo("pile", from);
      }
      case BONE, TRAY, LOT, TAXON, PERSON, NOTHING ->
          throw new IllegalArgumentException(hit.opens() + " stands on the Tray itself.");
    }
  }
}
