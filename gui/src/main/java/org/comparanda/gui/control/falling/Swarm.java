package org.comparanda.gui.control.falling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.comparanda.gui.control.falling.FallingPicture.Dot;

/**
 * Spreads the dots of a row over lanes so that they lie side by side, not on each other: each dot,
 * from the left, takes the free lane nearest the middle. In a crowd that no lanes can hold, dots
 * that lie together are heaped over their middle, each for as many animals as it takes to keep the
 * highest heap in the row: the heaps show where most animals are. The same dots always lie the same
 * way.
 *
 * @param spots what is drawn in each column
 */
record Swarm(Map<String, List<Spot>> spots) {
  /** So many animals in one strip are a crowd. */
  static final int CROWD = 150;

  private static final int[] ORDER = {0, -1, 1, -2, 2, -3, 3, -4, 4};

  /**
   * A mark that is drawn.
   *
   * @param dot number of the animal in its strip; in a crowd one of those that it stands for
   * @param value where it is drawn, mm
   * @param lane 0 the middle, negative above
   * @param animals how many it stands for
   */
  record Spot(int dot, double value, int lane, int animals) {}

  /** What is drawn in a column. */
  List<Spot> in(String column) {
    return spots.getOrDefault(column, List.of());
  }

  /** For how many animals a mark stands at most. */
  int most() {
    return spots.values().stream().flatMap(List::stream).mapToInt(Spot::animals).max().orElse(1);
  }

  /**
   * @param apart how far two dots of a lane must lie from each other, in data units, by column
   * @param most lanes that the height of the row has room for
   */
  static Swarm of(FallingPicture.Row row, Map<String, Double> apart, int most) {
    int lanes = Math.max(1, Math.min(most, ORDER.length));
    Map<String, List<Spot>> spots = new HashMap<>();
    apart.forEach(
        (column, gap) -> {
          List<Dot> dots = row.dots(column);
          spots.put(
              column, dots.size() > CROWD ? heaped(dots, gap, lanes) : spread(dots, gap, lanes));
        });
    return new Swarm(spots);
  }

  private static List<Integer> byValue(List<Dot> dots) {
    return IntStream.range(0, dots.size())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> dots.get(i).value()))
        .toList();
  }

  private static List<Spot> spread(List<Dot> dots, double gap, int lanes) {
    List<Double> last = new ArrayList<>();
    for (int i = 0; i < lanes; i++) {
      last.add(Double.NEGATIVE_INFINITY);
    }
    List<Spot> spots = new ArrayList<>();
    for (int dot : byValue(dots)) {
      double value = dots.get(dot).value();
      int taken = firstFree(last, value - gap);
      last.set(taken, value);
      spots.add(new Spot(dot, value, ORDER[taken], 1));
    }
    return List.copyOf(spots);
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

  private static List<Spot> heaped(List<Dot> dots, double gap, int lanes) {
    List<List<Integer>> heaps = heaps(dots, gap);
    int highest = heaps.stream().mapToInt(List::size).max().orElse(1);
    int each = (highest + lanes - 1) / lanes;
    List<Spot> spots = new ArrayList<>();
    for (List<Integer> heap : heaps) {
      double low = dots.get(heap.get(0)).value();
      double high = dots.get(heap.get(heap.size() - 1)).value();
      for (int from = 0; from < heap.size(); from += each) {
        int to = Math.min(heap.size(), from + each);
        int one = heap.get((from + to) / 2);
        spots.add(new Spot(one, (low + high) / 2, ORDER[from / each], to - from));
      }
    }
    return List.copyOf(spots);
  }

  /** Dots less than a gap from the first of their heap, from the left. */
  private static List<List<Integer>> heaps(List<Dot> dots, double gap) {
    List<List<Integer>> heaps = new ArrayList<>();
    double end = Double.NEGATIVE_INFINITY;
    for (int dot : byValue(dots)) {
      double value = dots.get(dot).value();
      if (heaps.isEmpty() || value >= end) {
        heaps.add(new ArrayList<>());
        end = value + gap;
      }
      heaps.get(heaps.size() - 1).add(dot);
    }
    return heaps;
  }
}
