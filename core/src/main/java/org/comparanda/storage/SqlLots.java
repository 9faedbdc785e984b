package org.comparanda.storage;

import java.util.List;
import java.util.Optional;
import org.comparanda.tray.Lot;
import org.comparanda.tray.Lots;
import org.jdbi.v3.core.mapper.RowMapper;

/** Lots in the collection's file. */
record SqlLots(Database database, DayBookRows dayBook) implements Lots {
  private static final RowMapper<Lot> LOT =
      (row, context) ->
          new Lot(
              row.getString("id"),
              Optional.ofNullable(row.getString("places"))
                  .map(Lot.Places::valueOf)
                  .orElse(Lot.Places.HELD_BACK),
              Optional.ofNullable(row.getString("remarks")).orElse(""));

  @Override
  public List<Lot> all() {
    return database.read(
        h ->
            h.createQuery(
                    "select t.lot as id, l.places, l.remarks from (select distinct lot from tray) t"
                        + " left join lot l on l.id = t.lot order by t.lot")
                .map(LOT)
                .list());
  }

  @Override
  public Lot lot(String id) {
    return database.read(
        h ->
            h.createQuery("select * from lot where id = :id")
                .bind("id", id)
                .map(LOT)
                .findOne()
                .orElse(Lot.named(id)));
  }

  @Override
  public void save(Lot lot) {
    database.write(
        h -> {
          h.createUpdate(
                  "insert into lot (id, places, remarks) values (:id, :places, :remarks)"
                      + " on conflict (id) do update set places = excluded.places,"
                      + " remarks = excluded.remarks")
              .bind("id", lot.id())
              .bind("places", lot.places().name())
              .bind("remarks", lot.remarks())
              .execute();
          dayBook.wrote(h, Kept.LOT, lot.id(), "");
          return lot;
        });
  }
}
