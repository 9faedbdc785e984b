package org.comparanda.gui.daybook;

import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import org.comparanda.daybook.DayBookPages;
import org.comparanda.daybook.Verdict;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.People;

/**
 * What the Day Book screen works with.
 *
 * @param head gives the head hash, which fixes everything before it
 */
public record DayBookRoom(
    DayBookPages pages,
    Supplier<String> head,
    Proof proof,
    People people,
    Words words,
    Locale locale,
    Clock clock) {
  /** Looks through the whole book. */
  public interface Proof {
    /**
     * What it found.
     *
     * @param done is told which part of the work is done, 0 to 1
     */
    Verdict of(Optional<String> head, DoubleConsumer done);
  }
}
