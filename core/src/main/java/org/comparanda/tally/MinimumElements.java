package org.comparanda.tally;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;

/**
 * Minimum number of elements behind the specimens of one element, per side: the whole ones plus the
 * largest count of one portion that occurs once in an element (proximal, shaft, distal). So a loose
 * epiphysis counts with its shaft once. Fragments of no named portion alone count as one. Source:
 * facts of the trade (Lyman 2008, from memory), worked by hand in the tests.
 */
record MinimumElements(int left, int right, int unsided) {
  static MinimumElements of(List<TallyRow> rows) {
    return new MinimumElements(
        count(rows, List.of(Side.LEFT)),
        count(rows, List.of(Side.RIGHT)),
        count(rows, List.of(Side.AXIAL, Side.NOT_KNOWN)));
  }

  int total() {
    return left + right + unsided;
  }

  private static int count(List<TallyRow> rows, List<Side> sides) {
    Map<Portion, Integer> byPortion = new EnumMap<>(Portion.class);
    rows.stream()
        .filter(r -> sides.contains(r.side()))
        .forEach(r -> byPortion.merge(r.portion(), r.count(), Integer::sum));
    int whole = byPortion.getOrDefault(Portion.WHOLE, 0);
    int largest =
        Math.max(
            byPortion.getOrDefault(Portion.PROXIMAL, 0),
            Math.max(
                byPortion.getOrDefault(Portion.SHAFT, 0),
                byPortion.getOrDefault(Portion.DISTAL, 0)));
    boolean onlyOther = whole == 0 && largest == 0 && byPortion.containsKey(Portion.OTHER);
    return onlyOther ? 1 : whole + largest;
  }
}
