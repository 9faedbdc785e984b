package org.comparanda.daybook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * All entries of all benches, as found.
 *
 * <p>Every bench has a chain. A chain of its own, {@link #JOINING}, lists the heads of all others
 * once a day and whenever a head hash is wanted. That entry's hash is the head hash: it fixes every
 * entry of every bench before it.
 *
 * @param entries in any order of benches, each bench in the order of its numbers
 */
public record DayBook(List<DayBookEntry> entries) {
  /** The chain that joins the others; no bench may have this name. */
  public static final String JOINING = "day";

  public DayBook {
    entries = List.copyOf(entries);
  }

  /** The entry that joins these heads, each the last entry of its bench. */
  public static DayBookEntry joining(
      Optional<DayBookEntry> lastJoining, List<DayBookEntry> heads, Instant at) {
    StringBuilder listed = new StringBuilder();
    for (DayBookEntry head : heads) {
      listed.append(head.number()).append(' ').append(head.hash()).append(' ');
      listed.append(head.bench()).append('\n');
    }
    return DayBookEntry.after(lastJoining, JOINING, at, "all benches", listed.toString());
  }

  /**
   * Looks through everything before a head hash that stood on a slip, a backup or an export. Found
   * are a changed byte, a dropped entry, a cut tail and chains rebuilt from some entry on.
   */
  public Verdict verify(String head) {
    Verdict chains = verifyChains();
    if (chains instanceof Verdict.Broken) {
      return chains;
    }
    boolean known =
        entries.stream().anyMatch(e -> e.bench().equals(JOINING) && e.hash().equals(head));
    return known ? chains : new Verdict.Broken(Verdict.Damage.HEAD_UNKNOWN, List.of(head));
  }

  /** Looks through the chains alone; without a head, a rebuilt or cut one can't be told. */
  public Verdict verifyChains() {
    Map<String, List<DayBookEntry>> chains = new TreeMap<>();
    entries.forEach(e -> chains.computeIfAbsent(e.bench(), none -> new ArrayList<>()).add(e));
    for (List<DayBookEntry> chain : chains.values()) {
      Optional<DayBookEntry> before = Optional.empty();
      for (DayBookEntry entry : chain) {
        if (!entry.follows(before)) {
          return broken(entry, Verdict.Damage.ENTRY_DROPPED);
        }
        if (!entry.holds()) {
          return broken(entry, Verdict.Damage.ENTRY_CHANGED);
        }
        before = Optional.of(entry);
      }
    }
    for (DayBookEntry entry : chains.getOrDefault(JOINING, List.of())) {
      for (String line : entry.content().lines().toList()) {
        if (!stands(line, chains)) {
          return new Verdict.Broken(
              Verdict.Damage.JOINED_ENTRY_GONE,
              List.of(String.valueOf(entry.number()), entry.bench(), line));
        }
      }
    }
    return new Verdict.Sound(entries.size());
  }

  private static boolean stands(String line, Map<String, List<DayBookEntry>> chains) {
    JoinedHead head = JoinedHead.read(line);
    List<DayBookEntry> chain = chains.getOrDefault(head.bench(), List.of());
    int number = Math.toIntExact(head.number());
    return number <= chain.size() && chain.get(number - 1).hash().equals(head.hash());
  }

  /**
   * How many times the benches had been joined before each entry was written: entries of different
   * benches stand in this order, whatever their clocks said. Benches that write of the same subject
   * are joined in between, so that two of them never stand equal.
   */
  public JoiningOrder order() {
    return JoiningOrder.of(
        entries.stream().filter(entry -> entry.bench().equals(JOINING)).toList());
  }

  private static Verdict broken(DayBookEntry entry, Verdict.Damage how) {
    return new Verdict.Broken(how, List.of(String.valueOf(entry.number()), entry.bench()));
  }
}
