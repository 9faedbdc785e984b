package org.comparanda.storage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.tray.Lot;
import org.comparanda.tray.LotNotes;
import org.jdbi.v3.core.Handle;

/**
 * Takes provenance and hazards over from the trays of an older form, where each tray had its own. A
 * text that all trays of a lot share moves to the lot. Hazards that differ all come to the lot, and
 * stay on their trays; a place that differs stays where it is. No word is lost.
 */
final class NotesOfLots {
  private NotesOfLots() {}

  /** What one tray has. */
  private record Row(String tray, String lot, LotNotes notes) {}

  static void takeOver(Handle h, DayBookRows dayBook) {
    Map<String, List<Row>> lots =
        h
            .createQuery("select id, lot, provenance, hazards from tray order by position")
            .map(
                (row, context) ->
                    new Row(
                        row.getString("id"),
                        row.getString("lot"),
                        new LotNotes(row.getString("provenance"), row.getString("hazards"))))
            .list()
            .stream()
            .collect(Collectors.groupingBy(Row::lot, TreeMap::new, Collectors.toList()));
    lots.forEach((lot, trays) -> takeOver(h, dayBook, lot, trays));
  }

  private static void takeOver(Handle h, DayBookRows dayBook, String id, List<Row> trays) {
    Optional<String> place = shared(trays, LotNotes::provenance);
    Optional<String> hazards = shared(trays, LotNotes::hazards);
    LotNotes found = new LotNotes(place.orElse(""), hazards.orElseGet(() -> allHazards(trays)));
    if (found.equals(LotNotes.none())) {
      return;
    }
    Lot lot = SqlLots.lot(h, id);
    SqlLots.save(h, lot.withNotes(found));
    dayBook.wrote(h, Kept.LOT, id, "provenance and hazards taken over from its trays");
    if (place.isPresent() || hazards.isPresent()) {
      for (Row tray : trays) {
        h.createUpdate(
                "update tray set provenance = :provenance, hazards = :hazards where id = :id")
            .bind("provenance", place.isPresent() ? "" : tray.notes().provenance())
            .bind("hazards", hazards.isPresent() ? "" : tray.notes().hazards())
            .bind("id", tray.tray())
            .execute();
        dayBook.wrote(h, Kept.TRAY, tray.tray(), "what all its trays share moved to lot " + id);
      }
    }
  }

  /** The text that every tray has; none where one has another or none. */
  private static Optional<String> shared(List<Row> trays, Function<LotNotes, String> text) {
    List<String> texts = trays.stream().map(t -> text.apply(t.notes())).distinct().toList();
    return texts.size() == 1
        ? Optional.of(texts.get(0)).filter(t -> !t.isBlank())
        : Optional.empty();
  }

  private static String allHazards(List<Row> trays) {
    return trays.stream()
        .map(t -> t.notes().hazards())
        .filter(text -> !text.isBlank())
        .distinct()
        .collect(Collectors.joining("; "));
  }
}
