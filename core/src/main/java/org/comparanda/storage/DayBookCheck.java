package org.comparanda.storage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.daybook.Verdict;
import org.jdbi.v3.core.Handle;

/** Looks through the Day Book, and whether every row that it keeps is what it says it was. */
final class DayBookCheck {
  private DayBookCheck() {}

  static Verdict verify(Handle h, Optional<String> head) {
    DayBook book = DayBookRows.read(h);
    Verdict chains = head.map(book::verify).orElseGet(book::verifyChains);
    return chains instanceof Verdict.Broken ? chains : rows(h, book).orElse(chains);
  }

  private static Optional<Verdict> rows(Handle h, DayBook book) {
    Map<String, Map<String, DayBookEntry>> lastOfEachBench = new TreeMap<>();
    for (DayBookEntry entry : book.entries()) {
      if (!entry.bench().equals(DayBook.JOINING)) {
        lastOfEachBench
            .computeIfAbsent(entry.subject(), none -> new HashMap<>())
            .put(entry.bench(), entry);
      }
    }
    Map<String, String> stored = Fingerprints.everything(h);
    for (Map.Entry<String, Map<String, DayBookEntry>> written : lastOfEachBench.entrySet()) {
      String now = stored.getOrDefault(written.getKey(), Change.GONE);
      if (!newest(List.copyOf(written.getValue().values())).contains(now)) {
        return broken(
            "The row of " + written.getKey() + " is gone or not what the Day Book wrote.");
      }
    }
    return stored.keySet().stream()
        .filter(subject -> !lastOfEachBench.containsKey(subject))
        .sorted()
        .findFirst()
        .flatMap(subject -> broken("The row of " + subject + " is not in the Day Book."));
  }

  /** What the newest entries say; those of two benches at the very same time stand side by side. */
  private static Set<String> newest(List<DayBookEntry> lastOfEachBench) {
    List<DayBookEntry> newest = new ArrayList<>();
    for (DayBookEntry entry : lastOfEachBench) {
      if (newest.isEmpty() || !entry.at().isBefore(newest.get(0).at())) {
        if (!newest.isEmpty() && entry.at().isAfter(newest.get(0).at())) {
          newest.clear();
        }
        newest.add(entry);
      }
    }
    return newest.stream()
        .map(entry -> Change.read(entry.content()).fingerprint())
        .collect(java.util.stream.Collectors.toSet());
  }

  private static Optional<Verdict> broken(String sentence) {
    return Optional.of(new Verdict.Broken(sentence));
  }
}
