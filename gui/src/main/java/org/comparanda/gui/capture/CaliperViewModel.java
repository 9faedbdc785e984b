package org.comparanda.gui.capture;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.GaugeCheck;
import org.comparanda.gui.caliper.LessonViewModel;
import org.comparanda.gui.text.Words;

/** Which caliper is in hand; remembered on this computer, named in every reading that it sends. */
public final class CaliperViewModel {
  /** Under which word the name of the caliper in hand is remembered. */
  public static final String REMEMBERED = "caliper";

  private final ReadingPlace place;
  private final Words words;
  private final ObjectProperty<Optional<CaliperCard>> inHand =
      new SimpleObjectProperty<>(Optional.empty());
  private final BooleanProperty learning = new SimpleBooleanProperty(false);

  public CaliperViewModel(ReadingPlace place, Words words) {
    this.place = place;
    this.words = words;
    inHand.set(place.memory().recall(REMEMBERED).flatMap(place.cards()::card));
  }

  /** The card of the caliper in hand; empty when readings are typed by hand. */
  public ObjectProperty<Optional<CaliperCard>> inHandProperty() {
    return inHand;
  }

  /** Whether a new card is being learned. */
  public BooleanProperty learningProperty() {
    return learning;
  }

  /** A lesson for a new card. */
  public LessonViewModel lesson() {
    return new LessonViewModel(place.cards(), place.clock(), words);
  }

  /** Takes a caliper in hand, or none. */
  public void take(Optional<CaliperCard> card) {
    inHand.set(card);
    place.memory().remember(REMEMBERED, card.map(CaliperCard::name).orElse(""));
    learning.set(false);
  }

  /** Stops learning without a card. */
  public void leaveLesson() {
    learning.set(false);
  }

  /** Records that the caliper in hand was checked on a gauge block today. */
  public void checkedToday() {
    inHand
        .get()
        .ifPresent(
            card -> {
              CaliperCard checked = card.withLastCheck(today());
              place.cards().save(checked);
              take(Optional.of(checked));
            });
  }

  /** What to say of the caliper in hand; empty while its check is fresh. */
  Optional<String> caution() {
    return inHand.get().flatMap(card -> GaugeCheck.withDefaults().caution(card, today()));
  }

  private LocalDate today() {
    return LocalDate.ofInstant(place.clock().instant(), place.clock().getZone());
  }

  /** The question which caliper is in hand. */
  public Ask ask() {
    List<CaliperCard> cards = place.cards().all();
    List<Question.Choice> choices = new ArrayList<>();
    choices.add(new Question.Choice("0", words.get("caliper.hand")));
    choices.addAll(Numbered.choices(cards, this::said));
    choices.add(new Question.Choice(Integer.toString(cards.size() + 1), words.get("caliper.new")));
    inHand
        .get()
        .ifPresent(
            card ->
                choices.add(
                    new Question.Choice(
                        Integer.toString(cards.size() + 2),
                        words.get("caliper.checked", card.name()))));
    return new Ask(
        new Question(words.get("caliper.title"), words.get("caliper.how"), choices),
        typed -> answer(cards, typed));
  }

  private Optional<String> answer(List<CaliperCard> cards, String typed) {
    int number = Numbered.number(typed).orElse(-1);
    if (number == 0) {
      take(Optional.empty());
    } else if (Numbered.of(cards, typed).isPresent()) {
      take(Numbered.of(cards, typed));
    } else if (number == cards.size() + 1) {
      learning.set(true);
    } else if (number == cards.size() + 2 && inHand.get().isPresent()) {
      checkedToday();
    } else {
      return Optional.of(place.words().get("answer.unknown", typed));
    }
    return Optional.empty();
  }

  private String said(CaliperCard card) {
    return words.get(
        "caliper.choice",
        card.name(),
        card.unit().symbol(),
        card.decimals(),
        card.lastCheck().map(LocalDate::toString).orElse(words.get("caliper.never")));
  }

  /** The caliper in hand in a few words; empty when readings are typed by hand. */
  public Optional<String> standing() {
    return inHand.get().map(card -> caution().orElse(words.get("caliper.inhand", card.name())));
  }
}
