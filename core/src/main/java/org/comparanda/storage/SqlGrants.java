package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.house.Grant;
import org.comparanda.house.Grants;
import org.comparanda.house.Right;
import org.comparanda.house.Rights;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.Outcome;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Rights in the collection's file. */
record SqlGrants(Database database, DayBookRows dayBook) implements Grants {
  @Override
  public Rights rights() {
    return database.read(SqlGrants::rights);
  }

  static Rights rights(Handle h) {
    return new Rights(
        h.createQuery("select * from right_given order by id").map(SqlGrants::grant).list());
  }

  @Override
  public Outcome<Grant> append(Grant grant) {
    return database.write(
        h -> {
          Optional<String> refusal = rights(h).refusal(grant);
          return refusal.isPresent()
              ? Outcome.none(refusal.get() + " Nothing was changed.", "Ask a keeper.")
              : Outcome.of(append(h, grant));
        });
  }

  private Grant append(Handle h, Grant grant) {
    SqlPeople.known(h, dayBook, grant.person());
    SqlPeople.known(h, dayBook, grant.by());
    long id = CallRows.next(h, "right_given");
    h.createUpdate(
            "insert into right_given (id, person_id, what, kind, by_id, at, reason)"
                + " values (:id, :person, :what, :kind, :by, :at, :reason)")
        .bind("id", id)
        .bind("person", grant.person().value())
        .bind("what", grant.right().name())
        .bind("kind", grant.kind().name())
        .bind("by", grant.by().value())
        .bind("at", grant.at().toString())
        .bind("reason", grant.reason())
        .execute();
    dayBook.wrote(
        h,
        Kept.RIGHT,
        id,
        (grant.right() + " " + grant.kind() + " " + grant.person().value())
            .toLowerCase(Locale.ROOT));
    return grant.withId(id);
  }

  private static Grant grant(ResultSet row, StatementContext context) throws SQLException {
    return new Grant(
        row.getLong("id"),
        new PersonId(row.getString("person_id")),
        Right.valueOf(row.getString("what")),
        Grant.Kind.valueOf(row.getString("kind")),
        new PersonId(row.getString("by_id")),
        Instant.parse(row.getString("at")),
        row.getString("reason"));
  }
}
