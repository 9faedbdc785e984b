package org.comparanda.gui.control.falling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.comparanda.gui.control.falling.FallingPicture.Dot;

/**
 * Spreads the dots of a row over lanes so that they lie side by side, not on each other: each dot,
 * from the left, takes the free lane nearest the middle. The same dots always lie the same way.
 *
 * @param lanes lane of each dot by column: 0 the middle, negative above
 */
record Swarm(Map<String, List<Integer>> lanes) {
  private static final int[] ORDER = {0, -1, 1, -2, 2, -3, 3, -4, 4};

  /** The lane of a dot. */
  int lane(String column, int dot) {
    return lanes.getOrDefault(column, List.of()).get(dot);
  }

  /**
   * @param apart how far two dots of a lane must lie from each other, in data units, by column
   * @param most lanes that the height of the row has room for
   */
  static Swarm of(FallingPicture.Row row, Map<String, Double> apart, int most) {
    Map<String, List<Integer>> lanes = new HashMap<>();
    apart.forEach((column, gap) -> lanes.put(column, spread(row.dots(column), gap, most)));
    return new Swarm(lanes);
  }

  private static List<Integer> spread(List<Dot> dots, double gap, int most) {
    int lanes = Math.max(1, Math.min(most, ORDER.length));
    List<Integer> byValue = new ArrayList<>();
    for (int i = 0; i < dots.size(); i++) {
      byValue.add(i);
    }
    byValue.sort(Comparator.comparingDouble(i -> dots.get(i).value()));
    List<Double> last = new ArrayList<>();
    for (int i = 0; i < lanes; i++) {
      last.add(Double.NEGATIVE_INFINITY);
    }
    Integer[] lane = new Integer[dots.size()];
    for (int dot : byValue) {
      int taken = firstFree(last, dots.get(dot).value() - gap);
      last.set(taken, dots.get(dot).value());
      lane[dot] = ORDER[taken];
    }
    return List.of(lane);
  }

  /** The first lane whose last dot lies left of the value; when all are full, the emptiest one. */
  private static int firstFree(List<Double> last, double before) {
    int emptiest = 0;
    for (int i = 0; i < last.size(); i++) {
      if (last.get(i) <= before) {
        return i;
      }
      if (last.get(i) < last.get(emptiest)) {
        emptiest = i;
      }
    }
    return emptiest;
  }
}
