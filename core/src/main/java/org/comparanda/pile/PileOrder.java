package org.comparanda.pile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.stock.Wanted;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * What goes on top of the pile, by rule: what research waits for lies above what it doesn't; then
 * the larger gain of the wanted list, its taxon's best element counting; then what came in first.
 */
public final class PileOrder {
  private PileOrder() {}

  /** The open arrivals, the top first. */
  public static List<PileEntry> of(
      List<Arrival> arrivals, List<Interest> interest, List<Wanted.Entry> wanted, TaxonTree tree) {
    Map<TaxonName, Wanted.Entry> best = new HashMap<>();
    for (Wanted.Entry entry : wanted) {
      best.merge(tree.accepted(entry.taxon()), entry, (a, b) -> a.gain() >= b.gain() ? a : b);
    }
    List<PileEntry> entries = new ArrayList<>();
    for (Arrival arrival : arrivals) {
      if (arrival.stage().open()) {
        entries.add(
            new PileEntry(
                0,
                arrival,
                interest.stream().filter(i -> i.arrival().equals(arrival.number())).toList(),
                Optional.ofNullable(best.get(tree.accepted(arrival.taxon())))));
      }
    }
    entries.sort(
        Comparator.comparing((PileEntry e) -> e.interest().isEmpty())
            .thenComparingDouble(
                e -> -e.wanted().map(Wanted.Entry::gain).orElse(Double.NEGATIVE_INFINITY))
            .thenComparing(e -> e.arrival().cameIn())
            .thenComparing(e -> e.arrival().number()));
    List<PileEntry> placed = new ArrayList<>();
    for (PileEntry entry : entries) {
      placed.add(
          new PileEntry(placed.size() + 1, entry.arrival(), entry.interest(), entry.wanted()));
    }
    return List.copyOf(placed);
  }
}
