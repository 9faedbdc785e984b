package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.PersonId;
import org.comparanda.tray.Scrap;
import org.comparanda.tray.Scraps;
import org.comparanda.tray.TrayId;
import org.jdbi.v3.core.statement.StatementContext;

/** Scrap in the collection's file. */
record SqlScraps(Database database, DayBookRows dayBook) implements Scraps {
  @Override
  public List<Scrap> of(TrayId tray) {
    return database.read(
        h ->
            h.createQuery("select * from scrap where tray_id = :tray order by id")
                .bind("tray", tray.value())
                .map(SqlScraps::scrap)
                .list());
  }

  @Override
  public Scrap append(Scrap scrap) {
    return database.write(
        h -> {
          SqlPeople.known(h, dayBook, scrap.person());
          long id = CallRows.next(h, "scrap");
          h.createUpdate(
                  "insert into scrap (id, tray_id, pieces, mass_g, person_id, at, remarks)"
                      + " values (:id, :tray, :pieces, :grams, :person, :at, :remarks)")
              .bind("id", id)
              .bind("tray", scrap.tray().value())
              .bind("pieces", scrap.pieces())
              .bind("grams", scrap.grams())
              .bind("person", scrap.person().value())
              .bind("at", scrap.at().toString())
              .bind("remarks", scrap.remarks())
              .execute();
          dayBook.wrote(h, Kept.SCRAP, id, "");
          return scrap.withId(id);
        });
  }

  private static Scrap scrap(ResultSet row, StatementContext context) throws SQLException {
    double grams = row.getDouble("mass_g");
    Optional<Double> weighed = row.wasNull() ? Optional.empty() : Optional.of(grams);
    return new Scrap(
        row.getLong("id"),
        new TrayId(row.getString("tray_id")),
        row.getLong("pieces"),
        weighed,
        new PersonId(row.getString("person_id")),
        Instant.parse(row.getString("at")),
        row.getString("remarks"));
  }
}
