package org.comparanda.gui.control.falling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.comparanda.gui.control.falling.FallingPicture.Dot;
import org.comparanda.gui.control.falling.FallingPicture.Row;
import org.comparanda.gui.control.plot.KindLook;
import org.junit.jupiter.api.Test;

class SwarmTest {
  @Test
  void dotsFarApartStayInTheMiddle() {
    Swarm swarm = Swarm.of(row(List.of(30.0, 40.0, 35.0)), Map.of("Bd", 1.0), 9);
    assertEquals(List.of(0, 0, 0), swarm.lanes().get("Bd"));
  }

  @Test
  void dotsOnEachOtherTakeDifferentLanes() {
    Swarm swarm = Swarm.of(row(List.of(30.0, 30.0, 30.2)), Map.of("Bd", 1.0), 9);
    assertEquals(3, swarm.lanes().get("Bd").stream().distinct().count());
  }

  @Test
  void whereLanesSufficeNoTwoDotsOverlap() { // property, 200 rows
    SplittableRandom random = new SplittableRandom(20417);
    for (int round = 0; round < 200; round++) {
      List<Double> values = random.doubles(9, 30, 33).boxed().toList();
      Row row = row(values);
      Swarm swarm = Swarm.of(row, Map.of("Bd", 0.4), 9);
      for (int i = 0; i < values.size(); i++) {
        for (int j = 0; j < i; j++) {
          boolean sameLane = swarm.lane("Bd", i) == swarm.lane("Bd", j);
          boolean close = Math.abs(values.get(i) - values.get(j)) < 0.4;
          assertTrue(!sameLane || !close, "round " + round + ": " + values);
        }
      }
    }
  }

  @Test
  void moreDotsThanLanesStillGetAPlace() {
    Swarm swarm = Swarm.of(row(List.of(30.0, 30.0, 30.0, 30.0)), Map.of("Bd", 1.0), 2);
    assertEquals(4, swarm.lanes().get("Bd").size());
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
