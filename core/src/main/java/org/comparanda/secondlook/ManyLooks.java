package org.comparanda.secondlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.agreement.FleissKappa;
import org.comparanda.statistics.agreement.Kappa;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;

/**
 * The independent calls on one bone: the first and every second look.
 *
 * @param calls at least two, the first call first
 */
public record ManyLooks(List<Call> calls, Queued.Why why) {
  private static final int FEWEST = 3;

  public ManyLooks {
    calls = List.copyOf(calls);
  }

  /**
   * Fleiss' kappa of three or more people, from the every-nth draw alone. The number of people is
   * the largest that three bones have; bones with fewer calls are left out, of those with more the
   * earliest count.
   */
  public static Outcome<Kappa> fleiss(List<ManyLooks> looks) {
    List<ManyLooks> drawn = looks.stream().filter(l -> !l.why().targeted()).toList();
    int people = 0;
    for (int m = FEWEST; withAtLeast(drawn, m).size() >= FEWEST; m++) {
      people = m;
    }
    if (people == 0) {
      return Outcome.none(
          "Fewer than three bones of the draw were called by three people.",
          "Let a third person look at the same bones.");
    }
    List<ManyLooks> used = withAtLeast(drawn, people);
    TreeSet<TaxonName> names = new TreeSet<>();
    for (ManyLooks look : used) {
      look.calls().subList(0, people).forEach(c -> names.add(c.taxon()));
    }
    Map<TaxonName, Integer> column = new TreeMap<>();
    names.forEach(name -> column.put(name, column.size()));
    int[][] counts = new int[used.size()][names.size()];
    for (int i = 0; i < used.size(); i++) {
      for (Call call : used.get(i).calls().subList(0, people)) {
        counts[i][column.getOrDefault(call.taxon(), 0)]++;
      }
    }
    return FleissKappa.of(counts).then(FleissKappa::kappa);
  }

  private static List<ManyLooks> withAtLeast(List<ManyLooks> looks, int people) {
    return new ArrayList<>(looks.stream().filter(l -> l.calls().size() >= people).toList());
  }
}
