package org.comparanda.capture;

import java.time.Duration;
import java.util.List;

/**
 * Tells a caliper from a hand by its speed. Characters less than 40 ms apart are one burst; a
 * character alone is a key. Line ends within 100 ms of each other, with nothing between them, count
 * once. Times are handed in (nanoseconds of any clock that only goes forward).
 */
public final class BurstDetector {
  /** From this pause on, a character begins something new. */
  public static final Duration PAUSE = Duration.ofMillis(40);

  private static final Duration ONE_LINE_END = Duration.ofMillis(100);

  private final StringBuilder collected = new StringBuilder();
  private long lastAt;
  private long lineEndAt;
  private boolean afterLineEnd;

  /** What was heard: a key of a hand, or a burst of a caliper. */
  public sealed interface Heard {}

  /** One character alone; a line end is always {@code \n}. */
  public record Key(char character) implements Heard {}

  /** Several characters in one go, as they came. */
  public record Burst(String text) implements Heard {}

  /** Takes a character; gives what was complete before it. */
  public List<Heard> typed(char character, long atNanos) {
    List<Heard> before = quiet(atNanos);
    boolean lineEnd = character == '\r' || character == '\n';
    if (lineEnd && afterLineEnd && atNanos - lineEndAt < ONE_LINE_END.toNanos()) {
      return before;
    }
    collected.append(character);
    lastAt = atNanos;
    afterLineEnd = lineEnd;
    if (lineEnd) {
      lineEndAt = atNanos;
    }
    return before;
  }

  /** Whether characters are coming right now, so that the next one belongs to them. */
  public boolean collecting(long atNanos) {
    return !collected.isEmpty() && atNanos - lastAt < PAUSE.toNanos();
  }

  /** Gives what is complete because nothing came for 40 ms; ask when that time is over. */
  public List<Heard> quiet(long atNanos) {
    if (collected.isEmpty() || atNanos - lastAt < PAUSE.toNanos()) {
      return List.of();
    }
    String text = collected.toString();
    collected.setLength(0);
    return List.of(text.length() == 1 ? key(text.charAt(0)) : new Burst(text));
  }

  private static Key key(char character) {
    return new Key(character == '\r' ? '\n' : character);
  }
}
