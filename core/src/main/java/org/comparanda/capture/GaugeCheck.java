package org.comparanda.capture;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * When a caliper must go to the gauge block again.
 *
 * @param longestDays days after which a check counts as old
 */
public record GaugeCheck(int longestDays) {
  /** Ninety days (common practice, no source). */
  public static GaugeCheck withDefaults() {
    return new GaugeCheck(90);
  }

  public GaugeCheck withLongestDays(int days) {
    return new GaugeCheck(days);
  }

  /** What to say of a caliper on this day; empty while its check is fresh. Never blocks. */
  public Optional<String> caution(CaliperCard card, LocalDate today) {
    if (card.lastCheck().isEmpty()) {
      return Optional.of(
          "\"" + card.name() + "\" was never checked on a gauge block. Check it before you go on.");
    }
    long days = ChronoUnit.DAYS.between(card.lastCheck().get(), today);
    if (days < 0) {
      return Optional.of(
          "\"" + card.name() + "\" was checked on a day that is still to come. Look at the date.");
    }
    return days <= longestDays
        ? Optional.empty()
        : Optional.of(
            "\""
                + card.name()
                + "\" was last checked on a gauge block "
                + days
                + " days ago (at most "
                + longestDays
                + "). Check it before you go on.");
  }
}
