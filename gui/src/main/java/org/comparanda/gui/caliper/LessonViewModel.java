package org.comparanda.gui.caliper;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperCards;
import org.comparanda.capture.CaliperText;
import org.comparanda.capture.CardLesson;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;

/** A new caliper card, learned from five test readings of any small thing. */
public final class LessonViewModel {
  private final CaliperCards cards;
  private final Clock clock;
  private final Words words;
  private final ObservableList<String> bursts = FXCollections.observableArrayList();
  private final StringProperty name = new SimpleStringProperty("");
  private final StringProperty serial = new SimpleStringProperty("");
  private final StringProperty reach = new SimpleStringProperty("150");
  private final BooleanProperty checkedToday = new SimpleBooleanProperty(false);
  private final ObjectProperty<LengthUnit> unit = new SimpleObjectProperty<>(LengthUnit.MILLIMETRE);
  private final StringProperty message = new SimpleStringProperty("");
  private final ObjectProperty<Optional<CaliperCard>> learned =
      new SimpleObjectProperty<>(Optional.empty());

  public LessonViewModel(CaliperCards cards, Clock clock, Words words) {
    this.cards = cards;
    this.clock = clock;
    this.words = words;
    name.set(freeName());
    message.set(words.get("lesson.begin", CardLesson.READINGS));
    unit.addListener((o, was, is) -> learn());
  }

  /** The test readings as they came, line ends made visible. */
  public ObservableList<String> bursts() {
    return bursts;
  }

  public StringProperty nameProperty() {
    return name;
  }

  /** Number on the instrument, may be empty. */
  public StringProperty serialProperty() {
    return serial;
  }

  /** How far its jaws open, mm, as typed; may be empty. */
  public StringProperty reachProperty() {
    return reach;
  }

  /** Whether it was checked on a gauge block today. */
  public BooleanProperty checkedTodayProperty() {
    return checkedToday;
  }

  /** Unit that its display shows. */
  public ObjectProperty<LengthUnit> unitProperty() {
    return unit;
  }

  /** What to do next, or why the readings teach nothing. */
  public StringProperty messageProperty() {
    return message;
  }

  /** The card, once five readings taught it. */
  public ObjectProperty<Optional<CaliperCard>> learnedProperty() {
    return learned;
  }

  /** A test reading came. */
  public void burst(String text) {
    if (bursts.size() == CardLesson.READINGS) {
      bursts.clear();
      learned.set(Optional.empty());
    }
    bursts.add(text);
    learn();
  }

  /** A hand typed, where a caliper is to be heard. */
  public void hand() {
    message.set(words.get("lesson.hand"));
  }

  /** Takes all test readings again. */
  public void again() {
    bursts.clear();
    learned.set(Optional.empty());
    message.set(words.get("lesson.begin", CardLesson.READINGS));
  }

  private void learn() {
    int missing = CardLesson.READINGS - bursts.size();
    if (missing > 0) {
      message.set(
          words.get(missing == CardLesson.READINGS ? "lesson.begin" : "lesson.more", missing));
      return;
    }
    CardLesson lesson =
        CardLesson.from("caliper", serial.get().strip(), unit.get(), List.copyOf(bursts));
    if (lesson instanceof CardLesson.Learned done) {
      learned.set(Optional.of(done.card()));
      message.set(said(done.card()));
    } else if (lesson instanceof CardLesson.NotLearned not) {
      learned.set(Optional.empty());
      message.set(words.said(not.reason()));
    }
  }

  private String said(CaliperCard card) {
    return words.get(
        "lesson.learned",
        card.unit().symbol(),
        words.get(card.decimalMark() == ',' ? "mark.comma" : "mark.point"),
        card.decimals(),
        words.get("lineend." + card.lineEnd()),
        card.resolution().mm());
  }

  /** Stores the card; empty, with the reason in the message, where it can't be stored yet. */
  public Optional<CaliperCard> save() {
    Optional<CaliperCard> ready = learned.get().flatMap(this::named);
    ready.ifPresent(cards::save);
    return ready;
  }

  private Optional<CaliperCard> named(CaliperCard card) {
    String wanted = name.get().strip();
    if (wanted.isEmpty() || cards.card(wanted).isPresent()) {
      message.set(words.get(wanted.isEmpty() ? "lesson.noname" : "lesson.taken", wanted));
      return Optional.empty();
    }
    CaliperCard named =
        new CaliperCard(
            wanted,
            serial.get().strip(),
            card.unit(),
            card.decimalMark(),
            card.fewestDecimals(),
            card.decimals(),
            card.lineEnd(),
            card.resolution(),
            Optional.empty(),
            checkedToday.get()
                ? Optional.of(LocalDate.ofInstant(clock.instant(), clock.getZone()))
                : Optional.empty());
    if (reach.get().isBlank()) {
      return Optional.of(named);
    }
    Optional<Length> opens =
        CaliperText.withoutCard()
            .typed(reach.get())
            .fold(
                read -> read.values().stream().findFirst().map(v -> v.length()),
                refused -> Optional.<Length>empty());
    if (opens.isEmpty()) {
      message.set(words.get("lesson.reach", reach.get()));
    }
    return opens.map(named::withReach);
  }

  private String freeName() {
    return IntStream.iterate(1, i -> i + 1)
        .mapToObj(i -> words.get("lesson.name", i))
        .filter(free -> cards.card(free).isEmpty())
        .findFirst()
        .orElse("");
  }
}
