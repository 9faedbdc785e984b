package org.comparanda.gui.capture;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.bone.Side;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperValue;
import org.comparanda.capture.FieldState;
import org.comparanda.capture.FieldState.Showing;
import org.comparanda.capture.OtherSide;
import org.comparanda.capture.Passes;
import org.comparanda.capture.Place;
import org.comparanda.capture.warning.ShelfRanges;
import org.comparanda.capture.warning.Warning;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.PartRule;

/** The field: its text, what lies over it, a burst that waits in it, and what is odd about it. */
final class EntryViewModel {
  private final ObjectProperty<FieldState> field = new SimpleObjectProperty<>(FieldState.empty());
  private final StringProperty message = new SimpleStringProperty("");
  private final ObjectProperty<List<Warning>> warnings = new SimpleObjectProperty<>(List.of());
  private Optional<HeldBurst> held = Optional.empty();
  private FieldText meaning =
      new FieldText(new ShelfRanges(Map.of()), List.of(), Optional.empty(), Optional.empty());

  /**
   * What a warning proposes for the value in the field.
   *
   * @param typed the value as it came
   * @param length what it may have meant
   * @param why the warning's sentence
   * @param card the caliper that sent it, if one did
   */
  record Proposed(CaliperValue typed, Length length, String why, Optional<CaliperCard> card) {}

  ObjectProperty<FieldState> fieldProperty() {
    return field;
  }

  StringProperty messageProperty() {
    return message;
  }

  ObjectProperty<List<Warning>> warningsProperty() {
    return warnings;
  }

  /** The caliper in hand. */
  Optional<CaliperCard> card() {
    return meaning.card();
  }

  void caliper(Optional<CaliperCard> card) {
    meaning = new FieldText(meaning.ranges(), meaning.partRules(), card, meaning.other());
  }

  /** Another bone is measured: what is odd is told from what the shelf shows of its element. */
  void against(ShelfRanges shelf, List<PartRule> rules, Optional<OtherSide> other) {
    meaning = new FieldText(shelf, rules, meaning.card(), other);
  }

  /** The bone of the other side, and its value at a place, mm. */
  Optional<Map.Entry<Side, Double>> beside(Optional<Place> place) {
    return meaning.other().flatMap(o -> place.flatMap(o::mm).map(mm -> Map.entry(o.side(), mm)));
  }

  /** Whether Enter would act on the field itself and nothing lies over it. */
  boolean uncovered() {
    Showing over = field.get().showing();
    return over == Showing.FIELD || over == Showing.PROPOSAL;
  }

  /** The burst that waits for one Enter. */
  Optional<HeldBurst> held() {
    return held;
  }

  /** The field, or the question over it, now holds this text. */
  void edit(String text, Optional<Passes> passes) {
    held = Optional.empty();
    message.set("");
    if (uncovered()) {
      show(text, passes.map(p -> meaning.odd(p, text)).orElse(List.of()));
    } else {
      field.set(field.get().withText(text));
    }
  }

  /** What is odd about a burst of one value. */
  List<Warning> odd(HeldBurst burst, Optional<Passes> passes) {
    return burst.single().flatMap(v -> passes.map(p -> meaning.odd(p, v))).orElse(List.of());
  }

  /** A burst waits in the field. */
  void hold(HeldBurst burst, List<Warning> odd, String said) {
    held = Optional.of(burst);
    show(burst.text(), odd);
    message.set(said);
  }

  private void show(String text, List<Warning> odd) {
    warnings.set(odd);
    boolean proposed = odd.stream().anyMatch(w -> w.proposal().isPresent());
    field.set(new FieldState(text, proposed ? Showing.PROPOSAL : Showing.FIELD));
  }

  /** What one key would take in place of a text. */
  Optional<Proposed> proposed(String text) {
    Optional<CaliperCard> card = held.flatMap(came -> meaning.card());
    Optional<CaliperValue> value = held.flatMap(HeldBurst::single).or(() -> FieldText.value(text));
    return value.flatMap(
        typed ->
            warnings.get().stream()
                .flatMap(
                    w ->
                        w.proposal().stream()
                            .map(length -> new Proposed(typed, length, w.sentence(), card)))
                .findFirst());
  }

  /** Something lies over the field. */
  void cover(Showing over) {
    field.set(new FieldState("", over));
  }

  /** Nothing lies over the field any more, and it is empty. */
  void uncover() {
    field.set(FieldState.empty());
  }

  /** What was typed could not be taken: it stays, with the sentence why. */
  void refused(String sentence) {
    field.set(new FieldState(field.get().text(), Showing.FIELD));
    message.set(sentence);
  }

  /** The next field is open. */
  void next(String said) {
    held = Optional.empty();
    warnings.set(List.of());
    uncover();
    message.set(said);
  }
}
