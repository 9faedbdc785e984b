package org.comparanda.storage;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.daybook.Verdict;
import org.jdbi.v3.core.Handle;

/** Looks through the Day Book, and whether readings and calls are what it says they were. */
final class DayBookCheck {
  private DayBookCheck() {}

  static Verdict verify(Handle h, Optional<String> head) {
    DayBook book = DayBookRows.read(h);
    Verdict chains = head.map(book::verify).orElseGet(book::verifyChains);
    return chains instanceof Verdict.Broken ? chains : rows(h, book).orElse(chains);
  }

  private static Optional<Verdict> rows(Handle h, DayBook book) {
    Map<String, String> written = new HashMap<>();
    for (DayBookEntry entry : book.entries()) {
      if (entry.subject().startsWith("reading ") || entry.subject().startsWith("call ")) {
        written.put(entry.subject(), entry.content());
      }
    }
    Map<String, String> stored = new HashMap<>();
    h.createQuery("select * from reading")
        .map(SqlReadingLog::reading)
        .forEach(reading -> stored.put("reading " + reading.id(), Fingerprints.of(reading)));
    h.createQuery("select * from bone_call")
        .map(SqlTrays::call)
        .forEach(call -> stored.put("call " + call.id(), Fingerprints.of(call)));
    return written.entrySet().stream()
        .filter(entry -> !entry.getValue().equals(stored.get(entry.getKey())))
        .map(Map.Entry::getKey)
        .findFirst()
        .map(subject -> "The row of " + subject + " is gone or not what the Day Book wrote.")
        .or(
            () ->
                stored.keySet().stream()
                    .filter(subject -> !written.containsKey(subject))
                    .findFirst()
                    .map(subject -> "The row of " + subject + " is not in the Day Book."))
        .map(Verdict.Broken::new);
  }
}
