package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.measurement.PersonId;
import org.comparanda.oldcards.AcceptedCard;
import org.comparanda.oldcards.CardDecision;
import org.comparanda.oldcards.CardOnFile;
import org.comparanda.oldcards.OldCard;
import org.comparanda.oldcards.OldCards;
import org.comparanda.tray.Beside;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Old cards in the collection's file, which itself refuses to change or remove one. */
record SqlOldCards(Database database, DayBookRows dayBook) implements OldCards {
  @Override
  public List<CardOnFile> all() {
    return database.read(
        h -> {
          Map<Long, List<CardDecision>> decisions = new HashMap<>();
          h.createQuery("select * from old_card_decision order by number")
              .map(SqlOldCards::decision)
              .forEach(d -> decisions.computeIfAbsent(d.card(), n -> new ArrayList<>()).add(d));
          return h.createQuery("select * from old_card order by number")
              .map(SqlOldCards::card)
              .map(card -> new CardOnFile(card, decisions.getOrDefault(card.number(), List.of())))
              .list();
        });
  }

  @Override
  public Optional<CardOnFile> card(long number) {
    return database.read(
        h ->
            h.createQuery("select * from old_card where number = :number")
                .bind("number", number)
                .map(SqlOldCards::card)
                .findOne()
                .map(card -> new CardOnFile(card, decisions(h, number))));
  }

  @Override
  public int add(List<OldCard> cards) {
    return database.write(
        h -> {
          Set<String> added = new HashSet<>();
          for (OldCard card : cards) {
            long number =
                h.createQuery("select coalesce(max(number), 0) + 1 from old_card")
                    .mapTo(Long.class)
                    .one();
            int rows =
                h.createUpdate(
                        "insert into old_card (number, source, source_row, card_text)"
                            + " select :number, :source, :row, :text where not exists"
                            + " (select 1 from old_card where source = :source"
                            + " and source_row = :row and card_text = :text)")
                    .bind("number", number)
                    .bind("source", card.source())
                    .bind("row", card.row())
                    .bind("text", card.text())
                    .execute();
            if (rows == 1) {
              added.add(String.valueOf(number));
            }
          }
          dayBook.wroteAll(h, Kept.OLD_CARD, added, "");
          return added.size();
        });
  }

  @Override
  public void accept(List<AcceptedCard> cards) {
    database.write(
        h -> {
          for (AcceptedCard card : cards) {
            accept(h, card);
          }
          return cards;
        });
  }

  private void accept(Handle h, AcceptedCard accepted) {
    boolean before =
        decisions(h, accepted.card().number()).stream()
            .anyMatch(d -> d.kind() == CardDecision.Kind.ACCEPTED);
    if (before) {
      throw new IllegalStateException(
          "Card " + accepted.card().number() + " was accepted before. Nothing was stored.");
    }
    if (h.createQuery("select count(*) from tray where id = :id")
            .bind("id", accepted.tray().id().value())
            .mapTo(Integer.class)
            .one()
        == 0) {
      TrayRows.save(h, dayBook, accepted.tray());
    }
    accepted.bones().forEach(bone -> TrayRows.save(h, dayBook, bone));
    accepted.readings().forEach(reading -> SqlReadingLog.append(h, dayBook, reading));
    accepted.calls().forEach(call -> CallRows.append(h, dayBook, call, Beside.nothing()));
    write(h, accepted.decision());
  }

  @Override
  public void refuse(CardDecision decision) {
    database.write(
        h -> {
          write(h, decision);
          return decision;
        });
  }

  private void write(Handle h, CardDecision decision) {
    SqlPeople.known(h, dayBook, decision.person());
    long number =
        h.createQuery("select coalesce(max(number), 0) + 1 from old_card_decision")
            .mapTo(Long.class)
            .one();
    h.createUpdate(
            "insert into old_card_decision (number, card_number, kind, person_id, at, note)"
                + " values (:number, :card, :kind, :person, :at, :note)")
        .bind("number", number)
        .bind("card", decision.card())
        .bind("kind", decision.kind().name())
        .bind("person", decision.person().value())
        .bind("at", decision.at().toString())
        .bind("note", decision.note())
        .execute();
    dayBook.wrote(h, Kept.CARD_DECISION, number, decision.note());
  }

  private static List<CardDecision> decisions(Handle h, long card) {
    return h.createQuery(
            "select * from old_card_decision where card_number = :card order by number")
        .bind("card", card)
        .map(SqlOldCards::decision)
        .list();
  }

  private static OldCard card(ResultSet row, StatementContext context) throws SQLException {
    return new OldCard(
        row.getLong("number"),
        row.getString("source"),
        row.getLong("source_row"),
        row.getString("card_text"));
  }

  private static CardDecision decision(ResultSet row, StatementContext context)
      throws SQLException {
    return new CardDecision(
        row.getLong("card_number"),
        CardDecision.Kind.valueOf(row.getString("kind")),
        new PersonId(row.getString("person_id")),
        Instant.parse(row.getString("at")),
        row.getString("note"));
  }
}
