package org.comparanda.oldcards;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.bone.BoneState;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.statistics.Outcome;
import org.comparanda.tray.Call;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/**
 * What an accepted card becomes: bones on a tray, each with a call by eye in the name of the person
 * who accepted, and with its written lengths where the card is about one bone.
 *
 * @param card the card
 * @param tray the tray that the bones go to
 * @param bones one per piece
 * @param readings as written on the card
 * @param calls one per bone
 * @param decision who accepted, when, which bones
 */
public record AcceptedCard(
    OldCard card,
    Tray tray,
    List<TrayBone> bones,
    List<Reading> readings,
    List<Call> calls,
    CardDecision decision) {
  public AcceptedCard {
    bones = List.copyOf(bones);
    readings = List.copyOf(readings);
    calls = List.copyOf(calls);
  }

  /** Makes them; not possible without a name and an element, or where the card names humans. */
  public static Outcome<AcceptedCard> of(
      OldCard card, Proposal said, Tray tray, PersonId person, Instant at) {
    if (said.namesHuman()) {
      return Outcome.none(
          "Card " + card.number() + " names human remains.",
          "Leave it, and show it to the person responsible.");
    }
    if (said.taxon().isEmpty()) {
      return Outcome.none(
          "No name was read on card " + card.number() + ".", "Give one, or refuse the card.");
    }
    if (said.element().isEmpty()) {
      return Outcome.none(
          "It was not read which bone card " + card.number() + " is about.",
          "Say the element, or refuse the card.");
    }
    String basis = "from an old card (" + card.source() + ", row " + card.row() + ")";
    List<TrayBone> bones = new ArrayList<>();
    List<Call> calls = new ArrayList<>();
    for (int piece = 1; piece <= said.count(); piece++) {
      BoneId id = new BoneId("card-" + card.number() + (said.count() == 1 ? "" : "-" + piece));
      bones.add(
          new TrayBone(
              id,
              tray.id(),
              java.util.Optional.empty(),
              said.element().get(),
              said.side(),
              said.portion(),
              BoneState.notRecorded().withFlags(said.flags()),
              TrayBone.Standing.OPEN,
              remarks(card, said)));
      calls.add(new Call(0, id, said.taxon().get(), said.qualifier(), person, at, basis, false));
    }
    return Outcome.of(
        new AcceptedCard(
            card,
            tray,
            bones,
            bones.size() == 1 ? readings(bones.get(0), said, person, at, basis) : List.of(),
            calls,
            new CardDecision(
                card.number(),
                CardDecision.Kind.ACCEPTED,
                person,
                at,
                String.join(", ", bones.stream().map(b -> b.id().value()).toList()))));
  }

  private static String remarks(OldCard card, Proposal said) {
    return "Old card: \""
        + card.text()
        + "\""
        + (said.leftOver().isEmpty() ? "" : "; not read: " + String.join(" ", said.leftOver()));
  }

  private static List<Reading> readings(
      TrayBone bone, Proposal said, PersonId person, Instant at, String basis) {
    List<Reading> takes = new ArrayList<>();
    said.lengths()
        .forEach(
            (code, written) ->
                takes.add(
                    new Reading(
                        0,
                        bone.id(),
                        bone.element(),
                        code,
                        Reading.Kind.TAKE,
                        written.asWritten(),
                        java.util.Optional.of(written.length()),
                        person,
                        at,
                        1,
                        false,
                        java.util.Optional.empty(),
                        java.util.Optional.empty(),
                        basis)));
    return takes;
  }
}
