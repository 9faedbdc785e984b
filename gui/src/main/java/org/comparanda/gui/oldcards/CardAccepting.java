package org.comparanda.gui.oldcards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.BoneAge;
import org.comparanda.measurement.PersonId;
import org.comparanda.oldcards.AcceptedCard;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.Proposal;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayId;

/** Makes bones with calls on a tray of what cards seem to say. */
record CardAccepting(CardsRoom room) {
  /** Stores all of them or none, and says what came of it. */
  String stored(List<CardOnFile> cards, Optional<Proposal> corrected, PersonId by, TrayId id) {
    Tray onto = tray(id);
    List<AcceptedCard> accepted = new ArrayList<>();
    for (CardOnFile card : cards) {
      Proposal said = corrected.orElseGet(() -> room.parser().read(card.card().text()));
      Outcome<AcceptedCard> made =
          AcceptedCard.of(card.card(), said, onto, by, room.clock().instant());
      if (made.value().isEmpty()) {
        return made.fold(v -> "", none -> room.words().said(none.reason() + " " + none.remedy()));
      }
      made.value().ifPresent(accepted::add);
    }
    room.cards().accept(accepted);
    int bones = accepted.stream().mapToInt(a -> a.bones().size()).sum();
    return room.words().get("accepted", accepted.size(), bones, onto.name());
  }

  private Tray tray(TrayId id) {
    return room.trays().all().stream()
        .filter(t -> t.id().equals(id))
        .findFirst()
        .orElseGet(
            () ->
                new Tray(
                    id, id.value(), id.value(), BoneAge.NOT_KNOWN, "", "", Tray.State.WAITING));
  }
}
