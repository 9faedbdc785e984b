package org.comparanda.gui.sizedesk;

import java.util.regex.Pattern;
import org.comparanda.gui.text.Words;
import org.comparanda.statistics.Outcome;

/** A length as typed: read or refused, never half-read. */
final class ReadingText {
  private static final Pattern NUMBER = Pattern.compile("\\d{1,7}([.]\\d{1,4}|,\\d{1,2}|,\\d{4})?");
  private static final Pattern COMMA_AND_THREE = Pattern.compile("\\d{1,3},\\d{3}");

  private ReadingText() {}

  static Outcome<Double> read(String text, Words words) {
    String typed = text.strip();
    if (COMMA_AND_THREE.matcher(typed).matches()) {
      return Outcome.none(words.get("reading.comma", typed), words.get("reading.comma.remedy"));
    }
    if (!NUMBER.matcher(typed).matches() || Double.parseDouble(typed.replace(',', '.')) <= 0) {
      return Outcome.none(words.get("reading.not", typed), words.get("reading.remedy"));
    }
    return Outcome.of(Double.parseDouble(typed.replace(',', '.')));
  }
}
