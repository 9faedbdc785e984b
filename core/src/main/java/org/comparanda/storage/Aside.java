package org.comparanda.storage;

import org.comparanda.register.AnimalCard;
import org.comparanda.register.Standing;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Stop;

/** Animals of which a bone may be human. */
final class Aside {
  private Aside() {}

  /** The card, if no bone of its animal may be human. */
  static Outcome<AnimalCard> open(AnimalCard card) {
    return card.standing().setAside()
        ? Outcome.none(
            card.id() + " is set aside: a bone of it may be human. Nothing was stored.",
            "A named person with the right open_stop opens that bone again first, with a reason.")
        : Outcome.of(card);
  }

  /** The card once a bone of it was set aside, or the last one opened again. */
  static AnimalCard after(AnimalCard card, Stop.Kind kind) {
    if (kind == Stop.Kind.SET_ASIDE) {
      return card.standing().setAside()
          ? card
          : card.withStanding(new Standing.SetAside(card.standing()));
    }
    return card.standing() instanceof Standing.SetAside aside
        ? card.withStanding(aside.before())
        : card;
  }
}
