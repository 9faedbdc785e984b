package org.comparanda.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawsTest {
  private static final int MANY = 200_000;

  // Normal cut at ±2.5, by hand: variance 1 − 2·2.5·φ(2.5)/(2Φ(2.5) − 1) with φ(2.5) = 0.0175283
  // and Φ(2.5) = 0.9937903 (printed tables), so 0.911257. Tolerances: four standard errors.
  @Test
  void normalDeviatesHaveTheMomentsOfTheCutNormal() {
    Draws draws = Draws.seeded(11);
    double[] drawn = DoubleStream.generate(draws::normal).limit(MANY).toArray();
    double mean = DoubleStream.of(drawn).average().orElseThrow();
    double square = DoubleStream.of(drawn).map(x -> x * x).average().orElseThrow();
    assertEquals(0, mean, 4 * 0.9546 / Math.sqrt(MANY));
    assertEquals(0.911257, square, 4 * 1.2 / Math.sqrt(MANY));
    assertTrue(DoubleStream.of(drawn).allMatch(x -> x >= -2.5 && x <= 2.5));
  }

  // A uniform number has mean 1/2 and variance 1/12. Tolerance: four standard errors.
  @Test
  void uniformNumbersHaveTheMeanOfTheUnitInterval() {
    Draws draws = Draws.seeded(12);
    double mean = DoubleStream.generate(draws::uniform).limit(MANY).average().orElseThrow();
    assertEquals(0.5, mean, 4 * Math.sqrt(1.0 / 12 / MANY));
  }

  @ParameterizedTest
  @CsvSource({"155.7,515.7", "112.6,121.6", "54.2,45.2", "22.8,22.8", "9.5,9.5"})
  void theFirstNeighbouringDigitsThatDifferAreSwapped(String typed, String slip) {
    assertEquals(slip, Slips.firstDigitsSwapped(typed));
  }

  @ParameterizedTest
  @CsvSource({"16.04,16.0", "16.05,16.1", "0.96,1.0", "200,200.0"})
  void lengthsAreTypedToATenth(double mm, String typed) {
    assertEquals(typed, TypedNumber.tenths(mm));
  }
}
