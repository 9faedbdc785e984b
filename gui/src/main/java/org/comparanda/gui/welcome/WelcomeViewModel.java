package org.comparanda.gui.welcome;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperCards;
import org.comparanda.gui.caliper.LessonViewModel;
import org.comparanda.gui.text.Words;
import org.comparanda.statistics.Outcome;

/** Three steps of the first start; each can be left by one key, and nothing is asked twice. */
public final class WelcomeViewModel {
  /** Where the first start stands. */
  public enum Step {
    WHO,
    COLLECTION,
    CALIPER
  }

  private final Doors doors;
  private final Clock clock;
  private final Words words;
  private final Words caliperWords;
  private final Consumer<String> done;
  private final ObjectProperty<Step> step = new SimpleObjectProperty<>(Step.WHO);
  private final StringProperty name = new SimpleStringProperty("");
  private final StringProperty message = new SimpleStringProperty("");
  private Optional<CaliperCards> cards = Optional.empty();

  /**
   * @param done takes the person's name when all is known; the collection is open by then
   */
  public WelcomeViewModel(
      Doors doors, Clock clock, Words words, Words caliperWords, Consumer<String> done) {
    this.doors = doors;
    this.clock = clock;
    this.words = words;
    this.caliperWords = caliperWords;
    this.done = done;
  }

  public ObjectProperty<Step> stepProperty() {
    return step;
  }

  /** How the person wants to be named. */
  public StringProperty nameProperty() {
    return name;
  }

  /** What is missing or went wrong; mostly empty. */
  public StringProperty messageProperty() {
    return message;
  }

  /** The person is named: on to the collection. */
  public void named() {
    if (name.get().isBlank()) {
      message.set(words.get("who.missing"));
    } else {
      message.set("");
      step.set(Step.COLLECTION);
    }
  }

  /** Opens the demo collection. */
  public void demo() {
    opened(doors.demo());
  }

  /** Makes an empty collection. */
  public void create(Path file) {
    opened(doors.create(file));
  }

  /** Opens a collection. */
  public void open(Path file) {
    opened(doors.open(file));
  }

  private void opened(Outcome<CaliperCards> outcome) {
    message.set(
        outcome.fold(ok -> "", none -> words.said(none.reason() + " " + none.remedy())).strip());
    outcome
        .value()
        .ifPresent(
            found -> {
              cards = Optional.of(found);
              if (found.all().isEmpty()) {
                step.set(Step.CALIPER);
              } else {
                finish();
              }
            });
  }

  /** The lesson of the third step; only there. */
  public Optional<LessonViewModel> lesson() {
    return cards.map(found -> new LessonViewModel(found, clock, caliperWords));
  }

  /** A card was learned and stored: its caliper is in hand from now on. */
  public void learned(CaliperCard card) {
    doors.takeInHand(card);
    finish();
  }

  /** All is known, or the caliper is left out. */
  public void finish() {
    done.accept(name.get().strip());
  }
}
