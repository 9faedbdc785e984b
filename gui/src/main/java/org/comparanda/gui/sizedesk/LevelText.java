package org.comparanda.gui.sizedesk;

import java.util.regex.Pattern;
import org.comparanda.gui.text.Words;
import org.comparanda.statistics.Outcome;

/** A level of intervals as typed, in per cent. */
final class LevelText {
  private static final Pattern PERCENT = Pattern.compile("\\d{1,2}([.,]\\d{1,3})?");

  private LevelText() {}

  /** As a part of one. */
  static Outcome<Double> read(String text, Words words) {
    String typed = text.replace("%", "").strip();
    double percent =
        PERCENT.matcher(typed).matches() ? Double.parseDouble(typed.replace(',', '.')) : 0;
    return percent > 0
        ? Outcome.of(percent / 100)
        : Outcome.none(words.get("level.not", text), words.get("level.remedy"));
  }
}
