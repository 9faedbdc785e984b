package org.comparanda.statistics.discriminant;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;

/**
 * The units of some rows dealt into folds, each group as evenly as it goes; a unit is in one fold
 * with all its rows. The same seed deals alike, whatever the order of the rows.
 */
public record Folds(List<Set<Integer>> units) {
  public Folds {
    units = units.stream().map(Collections::unmodifiableSet).toList();
  }

  /** Deals; folds that get no unit are left out. */
  public static Folds of(GroupedRows rows, int folds, long seed) {
    List<Set<Integer>> dealt = new ArrayList<>();
    for (int f = 0; f < folds; f++) {
      dealt.add(new TreeSet<>());
    }
    SplittableRandom random = new SplittableRandom(seed);
    int next = 0;
    Set<Integer> already = new TreeSet<>();
    for (int g = 0; g < rows.groups(); g++) {
      for (int unit : shuffled(unitsOf(rows, g), random)) {
        if (already.add(unit)) {
          dealt.get(next % folds).add(unit);
          next++;
        }
      }
    }
    return new Folds(dealt.stream().filter(fold -> !fold.isEmpty()).toList());
  }

  private static List<Integer> unitsOf(GroupedRows rows, int group) {
    Set<Integer> units = new TreeSet<>();
    for (int i = 0; i < rows.rows(); i++) {
      if (rows.group(i) == group) {
        units.add(rows.unit(i));
      }
    }
    return new ArrayList<>(units);
  }

  private static List<Integer> shuffled(List<Integer> units, SplittableRandom random) {
    for (int i = units.size() - 1; i > 0; i--) {
      Collections.swap(units, i, random.nextInt(i + 1));
    }
    return units;
  }
}
