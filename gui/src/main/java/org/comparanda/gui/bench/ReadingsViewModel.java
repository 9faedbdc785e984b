package org.comparanda.gui.bench;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.capture.CaliperInput;
import org.comparanda.capture.CaliperText;
import org.comparanda.capture.CaliperValue;
import org.comparanda.capture.Command;
import org.comparanda.capture.Draft;
import org.comparanda.capture.FieldState;
import org.comparanda.capture.FieldState.Showing;
import org.comparanda.capture.Keys;
import org.comparanda.capture.LineEnd;
import org.comparanda.capture.Measuring;
import org.comparanda.capture.NamedKey;
import org.comparanda.capture.PassRules;
import org.comparanda.capture.Passes;
import org.comparanda.capture.Place;
import org.comparanda.capture.warning.Entry;
import org.comparanda.capture.warning.EntryChecks;
import org.comparanda.capture.warning.ShelfRanges;
import org.comparanda.capture.warning.Warning;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;
import org.comparanda.tray.TrayBone;

/**
 * The readings of the bone in hand, driven by keys. Each accepted reading is in the log, and so on
 * the disk, before the next field opens.
 */
public final class ReadingsViewModel {
  /** What a key may ask for that is not about readings. */
  interface Beyond {
    /** The values changed; what follows from them is to be reckoned anew. */
    void changed();

    void recordCall();

    void showDefinition();

    void stop();
  }

  static final String BENCH = "bench 1";

  private final BenchPlace place;
  private final Beyond beyond;
  private final ObservableList<ReadingRow> rows = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Measurement>> current =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<FieldState> field = new SimpleObjectProperty<>(FieldState.empty());
  private final StringProperty message = new SimpleStringProperty("");
  private final ObjectProperty<List<Warning>> warnings = new SimpleObjectProperty<>(List.of());
  private Optional<Measuring> measuring = Optional.empty();
  private Optional<TrayBone> bone = Optional.empty();
  private Optional<String> waiting = Optional.empty();
  private ShelfRanges ranges = new ShelfRanges(Map.of());

  ReadingsViewModel(BenchPlace place, Beyond beyond) {
    this.place = place;
    this.beyond = beyond;
  }

  /** One row per measurement of the element, in protocol order. */
  public ObservableList<ReadingRow> rows() {
    return rows;
  }

  /** The measurement that waits for a reading; empty when all passes are over. */
  public ObjectProperty<Optional<Measurement>> currentProperty() {
    return current;
  }

  /** What the field holds and what lies over it. */
  public ObjectProperty<FieldState> fieldProperty() {
    return field;
  }

  /** What the person should know now: a refusal, bone down; mostly empty. */
  public StringProperty messageProperty() {
    return message;
  }

  /** What is odd about the value in the field; never a reason to refuse it. */
  public ObjectProperty<List<Warning>> warningsProperty() {
    return warnings;
  }

  /** A character came that a hand typed. */
  public void typed(char key) {
    follow(Keys.typed(field.get(), key));
  }

  /** A key came that types nothing. */
  public void pressed(NamedKey key) {
    if (key == NamedKey.ENTER && waiting.isPresent() && field.get().showing() == Showing.FIELD) {
      String burst = waiting.get();
      did(m -> m.acceptBurst(burst, Optional.empty()));
    } else {
      follow(Keys.pressed(field.get(), key));
    }
  }

  /** A burst came from a caliper. */
  public void burst(String text) {
    follow(Keys.burst(field.get(), text));
  }

  /** The values taken so far, mm. */
  Map<MeasurementCode, Double> values() {
    return measuring.map(m -> m.passes().values()).orElse(Map.of());
  }

  /** Measurements taken before that must not be seen while they are taken again. */
  Set<MeasurementCode> hidden() {
    Set<MeasurementCode> hidden = new LinkedHashSet<>();
    measuring
        .map(Measuring::passes)
        .ifPresent(
            p ->
                p.measurements().stream()
                    .map(Measurement::code)
                    .filter(c -> !p.counting(c).isEmpty() && p.visible(c).isEmpty())
                    .forEach(hidden::add));
    return hidden;
  }

  /** Whether nothing was ever read of this bone. */
  boolean untouched() {
    return measuring.filter(m -> m.passes().untouched()).isPresent();
  }

  /** Brings a bone to the bench, its readings as they were left. */
  void open(TrayBone next, PersonId person, ShelfRanges shelf) {
    bone = Optional.of(next);
    ranges = shelf;
    Passes restored =
        Passes.restore(
            next.id(),
            next.element(),
            next.portion(),
            place.protocol(),
            PassRules.withDefaults(),
            place.readings().of(next.id()));
    measuring = Optional.of(new Measuring(restored, place.readings(), place.clock(), person));
    moved();
  }

  /** Brings back the field and the half-typed text that were left, if they still have a place. */
  void resume(Draft left) {
    Optional<Place> now = measuring.flatMap(m -> m.passes().current());
    boolean fits =
        bone.filter(b -> b.id().equals(left.bone()) && b.element().equals(left.element()))
                .isPresent()
            && now.filter(p -> p.pass() == left.place().pass()).isPresent();
    if (fits) {
      if (!now.equals(Optional.of(left.place()))) {
        did(m -> m.goTo(left.place().code()));
      }
      edit(left.text());
    }
  }

  private void keep(String text) {
    measuring.ifPresent(
        m ->
            m.passes()
                .current()
                .ifPresent(
                    p ->
                        bone.ifPresent(
                            b ->
                                place
                                    .drafts()
                                    .save(BENCH, new Draft(b.id(), b.element(), p, text)))));
  }

  /** Clears the bench: nothing can be measured. */
  void close() {
    bone = Optional.empty();
    measuring = Optional.empty();
    place.drafts().clear(BENCH);
    moved();
  }

  private void follow(Command command) {
    if (command instanceof Command.Edit edit) {
      edit(edit.text());
    } else if (command instanceof Command.Accept accept) {
      did(m -> m.acceptTyped(accept.text()));
    } else if (command instanceof Command.AcceptBurst burst) {
      take(burst.text());
    } else if (command instanceof Command.AcceptProposal proposal) {
      propose(proposal.text());
    } else if (command instanceof Command.CannotTake cannot) {
      did(m -> m.notPossible(cannot.reason()));
    } else if (command instanceof Command.Ignored ignored) {
      message.set(ignored.sentence());
    } else if (command instanceof Command.Plain plain) {
      follow(plain);
    }
  }

  private void follow(Command.Plain command) {
    switch (command) {
      case SHOW_REASONS -> field.set(new FieldState("", Showing.REASONS));
      case HIDE_REASONS, NO_STOP -> field.set(FieldState.empty());
      case ANOTHER_TAKE -> did(Measuring::anotherTake);
      case UNDO -> did(Measuring::undo);
      case RECORD_CALL -> beyond.recordCall();
      case PREVIOUS -> did(Measuring::previous);
      case SHOW_DEFINITION -> {
        field.set(FieldState.empty());
        beyond.showDefinition();
      }
      case ASK_STOP -> field.set(new FieldState("", Showing.STOP_QUESTION));
      case STOP -> {
        field.set(FieldState.empty());
        beyond.stop();
      }
      case STAY -> {}
    }
  }

  private void edit(String text) {
    waiting = Optional.empty();
    message.set("");
    if (field.get().showing() == Showing.REASONS) {
      field.set(field.get().withText(text));
      return;
    }
    keep(text);
    List<Warning> odd = odd(text);
    warnings.set(odd);
    boolean proposed = odd.stream().anyMatch(w -> w.proposal().isPresent());
    field.set(new FieldState(text, proposed ? Showing.PROPOSAL : Showing.FIELD));
  }

  /** One value with its line end goes on; anything else waits in the field for one Enter. */
  private void take(String burst) {
    CaliperText.withoutCard()
        .burst(burst)
        .fold(
            read -> {
              boolean goesOn = read.values().size() == 1 && LineEnd.of(burst) != LineEnd.NONE;
              if (goesOn) {
                did(m -> m.acceptBurst(burst, Optional.empty()));
              } else {
                hold(burst, read);
              }
              return goesOn;
            },
            refused -> {
              message.set(refused.reason());
              return false;
            });
  }

  private void hold(String burst, CaliperInput.Read read) {
    List<String> texts = read.values().stream().map(CaliperValue::asTyped).toList();
    field.set(new FieldState(String.join("  ", texts), Showing.FIELD));
    waiting = Optional.of(burst);
    message.set(place.words().get("burst.waits", read.values().size()));
  }

  private void propose(String text) {
    Optional<Warning> warning =
        warnings.get().stream().filter(w -> w.proposal().isPresent()).findFirst();
    value(text)
        .ifPresent(
            value ->
                warning.ifPresent(
                    w ->
                        w.proposal()
                            .ifPresent(
                                length ->
                                    did(
                                        m ->
                                            m.acceptProposal(
                                                value, length, w.sentence(), Optional.empty())))));
  }

  private List<Warning> odd(String text) {
    return value(text).flatMap(this::entry).map(EntryChecks::warnings).orElse(List.of());
  }

  private Optional<Entry> entry(CaliperValue value) {
    return measuring.flatMap(
        m ->
            bone.flatMap(
                b ->
                    Entry.of(
                        m.passes(),
                        value,
                        ranges,
                        place.protocol().partRules(b.element()),
                        Optional.empty())));
  }

  private static Optional<CaliperValue> value(String text) {
    return CaliperText.withoutCard()
        .typed(text)
        .fold(
            read -> read.values().stream().findFirst(), refused -> Optional.<CaliperValue>empty());
  }

  private void did(Function<Measuring, Optional<String>> command) {
    measuring.ifPresent(
        m -> {
          Map<MeasurementCode, Double> before = m.passes().values();
          Optional<String> refused = command.apply(m);
          if (refused.isPresent()) {
            field.set(new FieldState(field.get().text(), Showing.FIELD));
            message.set(refused.get());
            return;
          }
          moved();
          if (!before.equals(m.passes().values())) {
            beyond.changed();
          }
        });
  }

  private void moved() {
    waiting = Optional.empty();
    warnings.set(List.of());
    field.set(FieldState.empty());
    message.set(measuring.map(m -> notice(m.passes())).orElse(""));
    Optional<Passes> passes = measuring.map(Measuring::passes);
    current.set(passes.flatMap(Passes::currentMeasurement));
    rows.setAll(passes.map(this::lines).orElse(List.of()));
    keep("");
  }

  private String notice(Passes p) {
    if (p.measurements().isEmpty()) {
      return place.words().get("nothing.to.measure");
    }
    if (p.boneDown()) {
      return place.words().get("bone.down", p.current().map(Place::pass).orElse(1));
    }
    return p.current().isEmpty() && !p.values().isEmpty() ? place.words().get("passes.over") : "";
  }

  private List<ReadingRow> lines(Passes p) {
    return bone.map(b -> place.protocol().of(b.element())).orElse(List.of()).stream()
        .map(m -> new ReadingLine(p, m, place.words(), place.numbers()).row())
        .toList();
  }
}
