package org.comparanda.pile;

import java.util.List;
import java.util.Optional;
import org.comparanda.stock.Wanted;

/**
 * One line of the pile in its order.
 *
 * @param place 1 for the top
 * @param interest research that waits for it, oldest first
 * @param wanted where five more of its taxon help most; empty where no gain can be computed
 */
public record PileEntry(
    int place, Arrival arrival, List<Interest> interest, Optional<Wanted.Entry> wanted) {
  public PileEntry {
    interest = List.copyOf(interest);
  }

  /** Why it lies where it lies, in words. */
  public String why() {
    StringBuilder why = new StringBuilder();
    interest.forEach(
        i ->
            why.append("Asked for by ")
                .append(i.by().value())
                .append(": ")
                .append(i.reason())
                .append(i.reason().endsWith(".") ? " " : ". "));
    why.append(
        wanted
            .map(
                w ->
                    "Five more would raise its kind's share by "
                        + w.growthText()
                        + " for the "
                        + w.element()
                        + ": "
                        + w.reason())
            .orElse("No gain can be computed for this name."));
    return why.toString();
  }
}
