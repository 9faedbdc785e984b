package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.comparanda.tray.Lot;
import org.comparanda.tray.LotNotes;
import org.comparanda.tray.Lots;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** Lots in the collection's file. */
record SqlLots(Database database, DayBookRows dayBook) implements Lots {
  private static final RowMapper<Lot> LOT =
      (row, context) ->
          new Lot(
              row.getString("id"),
              new LotNotes(text(row, "provenance"), text(row, "hazards")),
              Optional.ofNullable(row.getString("places"))
                  .map(Lot.Places::valueOf)
                  .orElse(Lot.Places.HELD_BACK),
              text(row, "remarks"));

  private static String text(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getString(column)).orElse("");
  }

  @Override
  public List<Lot> all() {
    return database.read(
        h ->
            h.createQuery(
                    "select t.lot as id, l.places, l.remarks, l.provenance, l.hazards"
                        + " from (select distinct lot from tray) t left join lot l on l.id = t.lot order by t.lot")
                .map(LOT)
                .list());
  }

  @Override
  public Lot lot(String id) {
    return database.read(h -> lot(h, id));
  }

  static Lot lot(Handle h, String id) {
    return h.createQuery("select * from lot where id = :id")
        .bind("id", id)
        .map(LOT)
        .findOne()
        .orElse(Lot.named(id));
  }

  @Override
  public void save(Lot lot) {
    database.write(
        h -> {
          save(h, lot);
          dayBook.wrote(h, Kept.LOT, lot.id(), "");
          return lot;
        });
  }

  static void save(Handle h, Lot lot) {
    h.createUpdate(
            "insert into lot (id, places, remarks, provenance, hazards) values (:id, :places,"
                + " :remarks, nullif(:provenance, ''), nullif(:hazards, ''))"
                + " on conflict (id) do update set places = excluded.places,"
                + " remarks = excluded.remarks, provenance = excluded.provenance,"
                + " hazards = excluded.hazards")
        .bind("id", lot.id())
        .bind("places", lot.places().name())
        .bind("remarks", lot.remarks())
        .bind("provenance", lot.notes().provenance())
        .bind("hazards", lot.notes().hazards())
        .execute();
  }
}
