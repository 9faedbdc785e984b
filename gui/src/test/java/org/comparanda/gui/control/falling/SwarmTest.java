package org.comparanda.gui.control.falling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.comparanda.gui.control.falling.FallingPicture.Dot;
import org.comparanda.gui.control.falling.FallingPicture.Row;
import org.comparanda.gui.control.falling.Swarm.Spot;
import org.comparanda.gui.control.plot.KindLook;
import org.junit.jupiter.api.Test;

class SwarmTest {
  @Test
  void dotsFarApartStayInTheMiddle() {
    Swarm swarm = Swarm.of(row(List.of(30.0, 40.0, 35.0)), Map.of("Bd", 1.0), 9);
    assertEquals(List.of(0, 0, 0), swarm.in("Bd").stream().map(Spot::lane).toList());
  }

  @Test
  void dotsOnEachOtherTakeDifferentLanes() {
    Swarm swarm = Swarm.of(row(List.of(30.0, 30.0, 30.2)), Map.of("Bd", 1.0), 9);
    assertEquals(3, swarm.in("Bd").stream().map(Spot::lane).distinct().count());
  }

  @Test
  void whereLanesSufficeNoTwoDotsOverlap() { // property, 200 rows
    SplittableRandom random = new SplittableRandom(20417);
    for (int round = 0; round < 200; round++) {
      List<Double> values = random.doubles(9, 30, 33).boxed().toList();
      Row row = row(values);
      List<Spot> spots = Swarm.of(row, Map.of("Bd", 0.4), 9).in("Bd");
      for (Spot one : spots) {
        for (Spot other : spots) {
          boolean sameLane = one.lane() == other.lane();
          boolean close = Math.abs(one.value() - other.value()) < 0.4;
          assertTrue(one.equals(other) || !sameLane || !close, "round " + round + ": " + values);
        }
      }
    }
  }

  @Test
  void moreDotsThanLanesStillGetAPlace() {
    Swarm swarm = Swarm.of(row(List.of(30.0, 30.0, 30.0, 30.0)), Map.of("Bd", 1.0), 2);
    assertEquals(4, swarm.in("Bd").size());
  }

  @Test
  void aCrowdIsHeapedAndEveryAnimalIsInOneHeap() {
    // 200 animals at 30, 100 at 32, one at 40; three lanes: a dot for up to ⌈200 / 3⌉ = 67 animals
    List<Double> values = new ArrayList<>(Collections.nCopies(200, 30.0));
    values.addAll(Collections.nCopies(100, 32.0));
    values.add(40.0);
    Swarm swarm = Swarm.of(row(values), Map.of("Bd", 1.0), 3);
    assertEquals(
        List.of("30.0 × 67", "30.0 × 67", "30.0 × 66", "32.0 × 67", "32.0 × 33", "40.0 × 1"),
        swarm.in("Bd").stream().map(s -> s.value() + " × " + s.animals()).toList());
    assertEquals(List.of(0, -1, 1, 0, -1, 0), swarm.in("Bd").stream().map(Spot::lane).toList());
    assertEquals(67, swarm.most());
  }

  static Row row(List<Double> values) {
    List<Dot> dots = new ArrayList<>();
    for (double value : values) {
      dots.add(new Dot(value, "HB-" + dots.size(), ""));
    }
    return new Row(
        "a",
        "Aus bus",
        "3 animals",
        KindLook.of(0),
        FallingPicture.Presence.IN_PLAY,
        Optional.empty(),
        Map.of("Bd", dots));
  }
}
