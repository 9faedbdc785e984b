package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.DayBookEntry;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The Day Book in the collection's file; written in the transaction of the change itself. */
record DayBookRows(String bench, Clock clock) {
  /** Writes what changed; the first change of a new day first joins the benches. */
  void write(Handle h, String subject, String content) {
    Instant now = clock.instant();
    Optional<DayBookEntry> last = last(h, bench);
    if (last.isPresent() && day(last.get().at()).isBefore(day(now))) {
      head(h);
    }
    insert(h, DayBookEntry.after(last, bench, now, subject, content));
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

  private static Optional<DayBookEntry> last(Handle h, String bench) {
    return h.createQuery("select * from day_book where bench = :bench order by number desc limit 1")
        .bind("bench", bench)
        .map(DayBookRows::entry)
        .findOne();
  }

  private static void insert(Handle h, DayBookEntry entry) {
    h.createUpdate(
            "insert into day_book (bench, number, at, subject, content, previous, hash) values"
                + " (:bench, :number, :at, :subject, :content, :previous, :hash)")
        .bind("bench", entry.bench())
        .bind("number", entry.number())
        .bind("at", entry.at().toString())
        .bind("subject", entry.subject())
        .bind("content", entry.content())
        .bind("previous", entry.previous())
        .bind("hash", entry.hash())
        .execute();
  }

  private static LocalDate day(Instant at) {
    return at.atZone(ZoneOffset.UTC).toLocalDate();
  }

  private static DayBookEntry entry(ResultSet row, StatementContext context) throws SQLException {
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
