package org.comparanda.storage;

import java.util.HashMap;
import java.util.Map;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.JoinedHead;
import org.jdbi.v3.core.Handle;

/**
 * Whether benches have to be joined before one of them writes, so that the Day Book itself tells
 * whose word on a subject came later, whatever the clocks of the benches say.
 */
final class BenchesInTurn {
  private BenchesInTurn() {}

  /** Whether another bench wrote of this subject and was not joined since. */
  static boolean othersWroteOf(Handle h, String bench, String subject) {
    Map<String, Long> others = new HashMap<>();
    h.createQuery(
            "select bench, max(number) as last from day_book where subject = :subject"
                + " and bench <> :bench and bench <> :joining group by bench")
        .bind("subject", subject)
        .bind("bench", bench)
        .bind("joining", DayBook.JOINING)
        .map((row, context) -> Map.entry(row.getString("bench"), row.getLong("last")))
        .forEach(other -> others.put(other.getKey(), other.getValue()));
    if (others.isEmpty()) {
      return false;
    }
    DayBookRows.last(h, DayBook.JOINING).stream()
        .flatMap(joining -> JoinedHead.all(joining).stream())
        .filter(head -> others.getOrDefault(head.bench(), 0L) <= head.number())
        .forEach(head -> others.remove(head.bench()));
    return !others.isEmpty();
  }

  /** Whether there is another bench at all. */
  static boolean othersWrote(Handle h, String bench) {
    return h.createQuery(
            "select exists (select 1 from day_book where bench <> :bench and bench <> :joining)")
        .bind("bench", bench)
        .bind("joining", DayBook.JOINING)
        .mapTo(Boolean.class)
        .one();
  }
}
