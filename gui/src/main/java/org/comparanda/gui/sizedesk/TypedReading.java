package org.comparanda.gui.sizedesk;

import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.statistics.Outcome;

/**
 * One reading as typed. Where nothing is typed, the value of the bone's own animal stands in, and
 * goes again with that animal.
 */
final class TypedReading {
  private final StringProperty text = new SimpleStringProperty("");
  private String filled = "";

  StringProperty textProperty() {
    return text;
  }

  /** The value typed, else the one that stands in; or why the text is none. */
  Outcome<Optional<Double>> settle(Optional<Double> standIn, Words words) {
    if (text.get().equals(filled)) {
      text.set("");
      filled = "";
    }
    if (text.get().isBlank()) {
      filled = standIn.map(v -> new Numbers(Locale.ROOT).upTo(v, 2)).orElse("");
      text.set(filled);
      return Outcome.of(standIn);
    }
    return ReadingText.read(text.get(), words).then(v -> Outcome.of(Optional.of(v)));
  }
}
