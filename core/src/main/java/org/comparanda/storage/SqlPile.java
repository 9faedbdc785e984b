package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.PersonId;
import org.comparanda.pile.Arrival;
import org.comparanda.pile.Interest;
import org.comparanda.pile.Pile;
import org.comparanda.taxon.TaxonName;
import org.jdbi.v3.core.statement.StatementContext;

/** What came in, in the collection's file. */
record SqlPile(Database database, DayBookRows dayBook) implements Pile {
  @Override
  public List<Arrival> all() {
    return database.read(
        h -> h.createQuery("select * from arrival order by number").map(SqlPile::arrival).list());
  }

  @Override
  public Optional<Arrival> arrival(String number) {
    return database.read(
        h ->
            h.createQuery("select * from arrival where number = :number")
                .bind("number", number)
                .map(SqlPile::arrival)
                .findOne());
  }

  @Override
  public void save(Arrival a) {
    database.write(
        h -> {
          h.createUpdate(
                  "insert into arrival (number, taxon, what, came_in, came_from, stage, place,"
                      + " permit, remarks) values (:number, :taxon, :what, :cameIn, :from, :stage,"
                      + " :place, :permit, :remarks) on conflict (number) do update set"
                      + " taxon = excluded.taxon, what = excluded.what,"
                      + " came_in = excluded.came_in, came_from = excluded.came_from,"
                      + " stage = excluded.stage, place = excluded.place,"
                      + " permit = excluded.permit, remarks = excluded.remarks")
              .bind("number", a.number())
              .bind("taxon", a.taxon().value())
              .bind("what", a.what())
              .bind("cameIn", a.cameIn().toString())
              .bind("from", a.from())
              .bind("stage", a.stage().name())
              .bind("place", a.place())
              .bind("permit", a.permit())
              .bind("remarks", a.remarks())
              .execute();
          dayBook.wrote(h, Kept.ARRIVAL, a.number(), a.stage().name());
          return a;
        });
  }

  @Override
  public List<Interest> interest() {
    return database.read(
        h ->
            h.createQuery("select * from arrival_interest order by number")
                .map(
                    (row, context) ->
                        new Interest(
                            row.getString("arrival"),
                            new PersonId(row.getString("person_id")),
                            row.getString("reason"),
                            Instant.parse(row.getString("at"))))
                .list());
  }

  @Override
  public void add(Interest interest) {
    database.write(
        h -> {
          SqlPeople.known(h, dayBook, interest.by());
          long number =
              h.createQuery("select coalesce(max(number), 0) + 1 from arrival_interest")
                  .mapTo(Long.class)
                  .one();
          h.createUpdate(
                  "insert into arrival_interest (number, arrival, person_id, reason, at) values"
                      + " (:number, :arrival, :person, :reason, :at)")
              .bind("number", number)
              .bind("arrival", interest.arrival())
              .bind("person", interest.by().value())
              .bind("reason", interest.reason())
              .bind("at", interest.at().toString())
              .execute();
          dayBook.wrote(h, Kept.INTEREST, number, interest.reason());
          return interest;
        });
  }

  private static Arrival arrival(ResultSet row, StatementContext context) throws SQLException {
    return new Arrival(
        row.getString("number"),
        new TaxonName(row.getString("taxon")),
        row.getString("what"),
        LocalDate.parse(row.getString("came_in")),
        row.getString("came_from"),
        Arrival.Stage.valueOf(row.getString("stage")),
        row.getString("place"),
        row.getString("permit"),
        row.getString("remarks"));
  }
}
