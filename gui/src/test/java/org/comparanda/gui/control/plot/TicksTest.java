package org.comparanda.gui.control.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Expected ticks written down by hand: what a person would letter on squared paper. */
class TicksTest {
  @Test
  void plainAxisIsLabelledAtRoundNumbers() {
    assertEquals(List.of(0.0, 20.0, 40.0, 60.0, 80.0, 100.0), plain(0, 100));
    assertEquals(List.of(31.0, 32.0, 33.0, 34.0), plain(30.4, 34.2));
    assertEquals(List.of(-0.2, -0.1, 0.0, 0.1), plain(-0.22, 0.17));
    assertEquals(List.of(0.05, 0.1, 0.15, 0.2), plain(0.031, 0.21));
  }

  @Test
  void logAxisOverOneDecadeIsLabelledAtOneTwoFive() {
    assertEquals(List.of(20.0, 50.0, 100.0, 200.0), log(18, 260));
  }

  @Test
  void logAxisOverManyDecadesIsLabelledAtPowersOfTen() {
    assertEquals(List.of(0.01, 0.1, 1.0, 10.0, 100.0, 1000.0, 10000.0), log(0.008, 20_000));
  }

  @Test
  void shortLogAxisIsLabelledLikeAPlainOne() {
    assertEquals(List.of(45.0, 50.0, 55.0, 60.0), log(41, 62));
  }

  @Test
  void everyAxisHasTwoToNineLabelsInsideItsEnds() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 2000; i++) {
      double low = Math.pow(10, random.nextDouble(-4, 4));
      double high = low * (1 + Math.pow(10, random.nextDouble(-2, 3)));
      for (AxisScale scale : AxisScale.values()) {
        List<Double> labels = Ticks.of(new Axis("", scale, low, high)).labelled();
        String which = scale + " from " + low + " to " + high + ": " + labels;
        assertTrue(labels.size() >= 2 && labels.size() <= 9, which);
        assertTrue(labels.stream().allMatch(v -> v >= low * 0.999 && v <= high * 1.001), which);
      }
    }
  }

  private static List<Double> plain(double low, double high) {
    return Ticks.of(new Axis("", AxisScale.PLAIN, low, high)).labelled();
  }

  private static List<Double> log(double low, double high) {
    return Ticks.of(new Axis("", AxisScale.LOG, low, high)).labelled();
  }
}
