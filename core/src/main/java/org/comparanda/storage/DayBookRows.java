package org.comparanda.storage;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.measurement.PersonId;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jdbi.v3.core.statement.Update;

/**
 * The Day Book in the collection's file; written in the transaction of the change itself.
 *
 * @param by who changes things, where the row itself doesn't say
 */
record DayBookRows(String bench, Clock clock, Optional<PersonId> by) {
  private static final String INSERT =
      "insert into day_book (bench, number, at, subject, content, previous, hash) values"
          + " (:bench, :number, :at, :subject, :content, :previous, :hash)";
  private static final String INSERT_MANY = INSERT.replaceAll(":[a-z]+", "?");

  /** The same book, in which changes stand as that person's. */
  DayBookRows by(PersonId person) {
    return new DayBookRows(bench, clock, Optional.of(person));
  }

  /** Writes that a row was added or changed; called after the row was written. */
  void wrote(Handle h, Kept kept, Object key, String words) {
    write(h, kept.subject(key), Fingerprints.one(h, kept, key), words);
  }

  /** The same for many rows of a kind at once, picked by their keys. */
  void wroteAll(Handle h, Kept kept, Set<String> keys, String words) {
    Map<String, String> prints = Fingerprints.all(h, kept);
    prints.keySet().retainAll(keys);
    wroteAll(h, kept, prints, words);
  }

  /** The same where the fingerprints are known, key to fingerprint. */
  void wroteAll(Handle h, Kept kept, Map<String, String> prints, String words) {
    Instant now = clock.instant();
    Optional<DayBookEntry> last = afterJoining(h, now);
    if (BenchesInTurn.othersWrote(h, bench)) {
      head(h);
    }
    try (PreparedStatement insert = h.getConnection().prepareStatement(INSERT_MANY)) {
      for (Map.Entry<String, String> print : prints.entrySet()) {
        DayBookEntry entry =
            entry(last, now, kept.subject(print.getKey()), print.getValue(), words);
        insert.setString(1, entry.bench());
        insert.setLong(2, entry.number());
        insert.setString(3, entry.at().toString());
        insert.setString(4, entry.subject());
        insert.setString(5, entry.content());
        insert.setString(6, entry.previous());
        insert.setString(7, entry.hash());
        insert.executeUpdate();
        last = Optional.of(entry);
      }
    } catch (SQLException problem) {
      throw new IllegalStateException("The Day Book could not be written.", problem);
    }
  }

  /** Writes every row as it stands: a file of an older form is taken over so. */
  void takeOver(Handle h) {
    for (Kept kept : Kept.ALL) {
      wroteAll(h, kept, Fingerprints.all(h, kept).keySet(), "taken over from an older form");
    }
  }

  private void write(Handle h, String subject, String print, String words) {
    Instant now = clock.instant();
    Optional<DayBookEntry> last = afterJoining(h, now);
    if (BenchesInTurn.othersWroteOf(h, bench, subject)) {
      head(h);
    }
    insert(h, entry(last, now, subject, print, words));
  }

  private DayBookEntry entry(
      Optional<DayBookEntry> last, Instant now, String subject, String print, String words) {
    Change change = new Change(print, by.map(PersonId::value).orElse(""), words);
    return DayBookEntry.after(last, bench, now, subject, change.content());
  }

  /** The last entry of this bench; the first change of a new day first joins the benches. */
  private Optional<DayBookEntry> afterJoining(Handle h, Instant now) {
    Optional<DayBookEntry> last = last(h, bench);
    if (last.isPresent() && day(last.get().at()).isBefore(day(now))) {
      head(h);
    }
    return last;
  }

  /** The head hash: joins the benches, unless nothing changed since they were joined last. */
  String head(Handle h) {
    List<DayBookEntry> heads =
        h.createQuery(
                "select d.* from day_book d join (select bench, max(number) as newest from day_book"
                    + " group by bench) m on m.bench = d.bench and m.newest = d.number"
                    + " where d.bench <> :joining order by d.bench")
            .bind("joining", DayBook.JOINING)
            .map(DayBookRows::entry)
            .list();
    Optional<DayBookEntry> last = last(h, DayBook.JOINING);
    DayBookEntry next = DayBook.joining(last, heads, clock.instant());
    if (last.isPresent() && last.get().content().equals(next.content())) {
      return last.get().hash();
    }
    insert(h, next);
    return next.hash();
  }

  static DayBook read(Handle h) {
    return new DayBook(
        h.createQuery("select * from day_book order by bench, number")
            .map(DayBookRows::entry)
            .list());
  }

  /** Everything written of a subject on any bench, oldest first. */
  static List<DayBookEntry> about(Handle h, String subject) {
    return h.createQuery(
            "select * from day_book where subject = :subject order by at, bench, number")
        .bind("subject", subject)
        .map(DayBookRows::entry)
        .list();
  }

  static Optional<DayBookEntry> last(Handle h, String bench) {
    return h.createQuery("select * from day_book where bench = :bench order by number desc limit 1")
        .bind("bench", bench)
        .map(DayBookRows::entry)
        .findOne();
  }

  private static void insert(Handle h, DayBookEntry entry) {
    try (Update insert = h.createUpdate(INSERT)) {
      insert
          .bind("bench", entry.bench())
          .bind("number", entry.number())
          .bind("at", entry.at().toString())
          .bind("subject", entry.subject())
          .bind("content", entry.content())
          .bind("previous", entry.previous())
          .bind("hash", entry.hash())
          .execute();
    }
  }

  private static LocalDate day(Instant at) {
    return at.atZone(ZoneOffset.UTC).toLocalDate();
  }

  static DayBookEntry entry(ResultSet row, StatementContext context) throws SQLException {
    return new DayBookEntry(
        row.getString("bench"),
        row.getLong("number"),
        Instant.parse(row.getString("at")),
        row.getString("subject"),
        row.getString("content"),
        row.getString("previous"),
        row.getString("hash"));
  }
}
