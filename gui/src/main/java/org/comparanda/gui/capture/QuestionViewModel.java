package org.comparanda.gui.capture;

import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.capture.FieldState;

/** The one question that lies over the readings; digits and Enter in the field answer it. */
public final class QuestionViewModel {
  private final ReadingsViewModel readings;
  private final ObjectProperty<Optional<Question>> question =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty refusal = new SimpleStringProperty("");
  private Optional<Ask> asked = Optional.empty();

  public QuestionViewModel(ReadingsViewModel readings) {
    this.readings = readings;
    readings.fieldProperty().addListener((o, was, is) -> closedWith(is));
  }

  /** The question; empty while nothing is asked. */
  public ObjectProperty<Optional<Question>> questionProperty() {
    return question;
  }

  /** Why the last answer could not be taken; mostly empty. */
  public StringProperty refusalProperty() {
    return refusal;
  }

  /** Puts a question. */
  public void ask(Ask next) {
    asked = Optional.of(next);
    refusal.set("");
    readings.ask();
    question.set(Optional.of(next.question()));
  }

  /** Takes an answer; one that can't be taken leaves the question open. */
  public void answer(String typed) {
    Optional<Ask> open = asked;
    Optional<String> refused = open.flatMap(ask -> ask.answer().apply(typed));
    boolean another = !open.equals(asked);
    if (refused.isPresent() && !another) {
      refusal.set(refused.get());
      readings.ask();
    } else if (!another) {
      close();
    }
  }

  private void close() {
    drop();
    if (readings.fieldProperty().get().showing() == FieldState.Showing.ASKED) {
      readings.leave();
    }
  }

  /** A question is left when the field shows something else. */
  private void closedWith(FieldState field) {
    if (field.showing() != FieldState.Showing.ASKED && asked.isPresent()) {
      drop();
    }
  }

  private void drop() {
    asked = Optional.empty();
    question.set(Optional.empty());
    refusal.set("");
  }
}
