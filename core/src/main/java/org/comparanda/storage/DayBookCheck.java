package org.comparanda.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleConsumer;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.daybook.JoiningOrder;
import org.comparanda.daybook.Verdict;
import org.jdbi.v3.core.Handle;

/** Looks through the Day Book, and whether every row that it keeps is what it says it was. */
final class DayBookCheck {
  private DayBookCheck() {}

  /** Parts of the work, as far as can be told beforehand: reading, chains, then the rows. */
  private static final double READ = 0.25;

  private static final double CHAINS = 0.5;

  /**
   * @param done is told now and then which part of the work is done, 0 to 1
   */
  static Verdict verify(Handle h, Optional<String> head, DoubleConsumer done) {
    done.accept(0);
    DayBook book = DayBookRows.read(h);
    done.accept(READ);
    Verdict chains = head.map(book::verify).orElseGet(book::verifyChains);
    done.accept(CHAINS);
    return chains instanceof Verdict.Broken ? chains : rows(h, book, done).orElse(chains);
  }

  private static Optional<Verdict> rows(Handle h, DayBook book, DoubleConsumer done) {
    Map<String, Map<String, DayBookEntry>> lastOfEachBench = new TreeMap<>();
    for (DayBookEntry entry : book.entries()) {
      if (!entry.bench().equals(DayBook.JOINING)) {
        lastOfEachBench
            .computeIfAbsent(entry.subject(), none -> new HashMap<>())
            .put(entry.bench(), entry);
      }
    }
    JoiningOrder order = book.order();
    Map<String, String> stored =
        Fingerprints.everything(h, part -> done.accept(CHAINS + (1 - CHAINS) * part));
    for (Map.Entry<String, Map<String, DayBookEntry>> written : lastOfEachBench.entrySet()) {
      String now = stored.getOrDefault(written.getKey(), Change.GONE);
      if (!newest(List.copyOf(written.getValue().values()), order).contains(now)) {
        return broken(Verdict.Damage.ROW_CHANGED, written.getKey());
      }
    }
    return stored.keySet().stream()
        .filter(subject -> !lastOfEachBench.containsKey(subject))
        .sorted()
        .findFirst()
        .flatMap(subject -> broken(Verdict.Damage.ROW_UNKNOWN, subject));
  }

  /**
   * What the newest entries say. Which is newer is told by the joining of the benches between them.
   * In a book of an older form they may stand between the same two joinings; then by the clock, and
   * those of the very same time stand side by side.
   */
  private static Set<String> newest(List<DayBookEntry> lastOfEachBench, JoiningOrder order) {
    Comparator<DayBookEntry> byAge =
        Comparator.comparingInt(order::joinedBefore).thenComparing(DayBookEntry::at);
    List<DayBookEntry> newest = new ArrayList<>();
    for (DayBookEntry entry : lastOfEachBench) {
      int newer = newest.isEmpty() ? 1 : byAge.compare(entry, newest.get(0));
      if (newer > 0) {
        newest.clear();
      }
      if (newer >= 0) {
        newest.add(entry);
      }
    }
    return newest.stream()
        .map(entry -> Change.read(entry.content()).fingerprint())
        .collect(java.util.stream.Collectors.toSet());
  }

  private static Optional<Verdict> broken(Verdict.Damage damage, String subject) {
    return Optional.of(new Verdict.Broken(damage, List.of(subject)));
  }
}
