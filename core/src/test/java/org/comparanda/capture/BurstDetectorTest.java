package org.comparanda.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.capture.BurstDetector.Heard;
import org.junit.jupiter.api.Test;

/** Times in ms, handed in; the limits of 40 and 100 ms are those of the design. */
class BurstDetectorTest {
  private final BurstDetector detector = new BurstDetector();
  private final List<Heard> heard = new ArrayList<>();

  private void at(long ms, char character) {
    heard.addAll(detector.typed(character, ms * 1_000_000));
  }

  private void quietAt(long ms) {
    heard.addAll(detector.quiet(ms * 1_000_000));
  }

  @Test
  void fastCharactersAreOneBurst() {
    at(0, '1');
    at(39, '2');
    at(78, '.');
    at(100, '3');
    quietAt(139);
    assertEquals(List.of(), heard);
    quietAt(140);
    assertEquals(List.of(new BurstDetector.Burst("12.3")), heard);
  }

  @Test
  void slowCharactersAreKeys() {
    at(0, '1');
    at(40, '2');
    at(200, '-');
    quietAt(1000);
    assertEquals(
        List.of(new BurstDetector.Key('1'), new BurstDetector.Key('2'), new BurstDetector.Key('-')),
        heard);
  }

  @Test
  void commandsInsideABurstAreNotKeys() {
    at(0, '-');
    at(10, '-');
    at(20, '-');
    quietAt(100);
    assertEquals(List.of(new BurstDetector.Burst("---")), heard);
  }

  @Test
  void lineEndsWithinATenthOfASecondCountOnce() {
    at(0, '\r');
    at(60, '\n');
    quietAt(200);
    at(300, '\n');
    quietAt(400);
    assertEquals(List.of(new BurstDetector.Key('\n'), new BurstDetector.Key('\n')), heard);
  }

  @Test
  void lineEndAfterABurstThatHadOneIsSwallowed() {
    at(0, '1');
    at(10, '\r');
    at(70, '\n');
    quietAt(200);
    assertEquals(List.of(new BurstDetector.Burst("1\r")), heard);
  }

  @Test
  void lineEndsOfTwoValuesAreTwo() {
    at(0, '1');
    at(10, '\r');
    at(20, '2');
    at(30, '\r');
    quietAt(200);
    assertEquals(List.of(new BurstDetector.Burst("1\r2\r")), heard);
  }
}
