package org.comparanda.daybook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The order of entries of different benches by the entries that joined them, not by clocks. */
public final class JoiningOrder {
  private final Map<String, List<Long>> lastNumbers;
  private final int joinings;

  private JoiningOrder(Map<String, List<Long>> lastNumbers, int joinings) {
    this.lastNumbers = lastNumbers;
    this.joinings = joinings;
  }

  /** By these joining entries, oldest first. */
  static JoiningOrder of(List<DayBookEntry> joinings) {
    Map<String, List<Long>> numbers = new HashMap<>();
    for (int i = 0; i < joinings.size(); i++) {
      for (JoinedHead head : JoinedHead.all(joinings.get(i))) {
        List<Long> ofBench = numbers.computeIfAbsent(head.bench(), none -> new ArrayList<>());
        while (ofBench.size() < i) {
          ofBench.add(0L); // the bench had written nothing yet
        }
        ofBench.add(head.number());
      }
    }
    return new JoiningOrder(numbers, joinings.size());
  }

  /** How often the benches had been joined before this entry was written. */
  public int joinedBefore(DayBookEntry entry) {
    List<Long> last = lastNumbers.getOrDefault(entry.bench(), List.of());
    int from = 0;
    int to = last.size();
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (last.get(middle) >= entry.number()) {
        to = middle;
      } else {
        from = middle + 1;
      }
    }
    return from < last.size() ? from : joinings;
  }
}
