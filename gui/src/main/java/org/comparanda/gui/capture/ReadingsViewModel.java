package org.comparanda.gui.capture;

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
import org.comparanda.bone.Side;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperInput;
import org.comparanda.capture.CaliperText;
import org.comparanda.capture.Command;
import org.comparanda.capture.Draft;
import org.comparanda.capture.FieldState;
import org.comparanda.capture.FieldState.Showing;
import org.comparanda.capture.Keys;
import org.comparanda.capture.Measuring;
import org.comparanda.capture.NamedKey;
import org.comparanda.capture.OtherSide;
import org.comparanda.capture.Passes;
import org.comparanda.capture.warning.ShelfRanges;
import org.comparanda.capture.warning.Warning;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;

/**
 * The readings of the bone in hand, driven by keys. Each accepted reading is in the log, and so on
 * the disk, before the next field opens.
 */
public final class ReadingsViewModel {
  private final ReadingPlace place;
  private final Beyond beyond;
  private final OpenField open;
  private final ObservableList<ReadingRow> rows = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Measurement>> current =
      new SimpleObjectProperty<>(Optional.empty());
  private final EntryViewModel entry = new EntryViewModel();
  private final StringProperty beside = new SimpleStringProperty("");
  private Optional<Measuring> measuring = Optional.empty();

  public ReadingsViewModel(ReadingPlace place, Beyond beyond) {
    this.place = place;
    this.beyond = beyond;
    open = new OpenField(place.name(), place.drafts());
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
    return entry.fieldProperty();
  }

  /** What the person should know now: a refusal, bone down; mostly empty. */
  public StringProperty messageProperty() {
    return entry.messageProperty();
  }

  /** What is odd about the value in the field; never a reason to refuse it. */
  public ObjectProperty<List<Warning>> warningsProperty() {
    return entry.warningsProperty();
  }

  /** The other side's value of the field in hand; empty where there is none to be seen. */
  public StringProperty besideProperty() {
    return beside;
  }

  /** A character came that a hand typed. */
  public void typed(char key) {
    follow(Keys.typed(fieldProperty().get(), key));
  }

  /** A key came that types nothing. */
  public void pressed(NamedKey key) {
    Optional<HeldBurst> held = entry.held();
    if (key == NamedKey.ENTER && held.isPresent() && entry.uncovered()) {
      did(m -> m.acceptBurst(held.get().burst(), entry.card()));
    } else {
      follow(Keys.pressed(fieldProperty().get(), key));
    }
  }

  /** A burst came from a caliper. */
  public void burst(String text) {
    follow(Keys.burst(fieldProperty().get(), text));
  }

  /** The caliper in hand is this one from now on; none when values are typed by hand. */
  public void caliper(Optional<CaliperCard> card) {
    entry.caliper(card);
  }

  /** The values taken so far, mm. */
  public Map<MeasurementCode, Double> values() {
    return measuring.map(m -> m.passes().values()).orElse(Map.of());
  }

  /** Measurements taken before that must not be seen while they are taken again. */
  public Set<MeasurementCode> hidden() {
    return passes().map(Passes::hidden).orElse(Set.of());
  }

  /** Whether nothing was ever read of this bone. */
  public boolean untouched() {
    return passes().filter(Passes::untouched).isPresent();
  }

  /** Where the measuring of the bone in hand stands. */
  public Optional<Passes> passes() {
    return measuring.map(Measuring::passes);
  }

  /**
   * Takes a bone in hand, its readings as they were left.
   *
   * @param otherSide the bone that is measured beside it
   */
  public void open(
      Passes restored, PersonId person, ShelfRanges shelf, Optional<OtherSide> otherSide) {
    entry.against(shelf, place.protocol().partRules(restored.element()), otherSide);
    measuring = Optional.of(new Measuring(restored, place.readings(), place.clock(), person));
    moved();
  }

  /** Brings back the field and the half-typed text that were left, if they still have a place. */
  public void resume(Draft left) {
    Optional<Draft> fitting = passes().flatMap(p -> open.fitting(p, left));
    fitting.ifPresent(
        draft -> {
          if (!passes().flatMap(Passes::current).equals(Optional.of(draft.place()))) {
            move(m -> m.goTo(draft.place().code()));
          }
          edit(draft.text());
        });
  }

  /** Opens a question over the field; digits answer it. */
  public void ask() {
    entry.cover(Showing.ASKED);
  }

  /** Closes whatever lies over the field. */
  public void leave() {
    entry.uncover();
  }

  /** Says a sentence under the readings. */
  public void say(String sentence) {
    entry.messageProperty().set(sentence);
  }

  /** Clears the bench: nothing can be measured. */
  public void close() {
    measuring = Optional.empty();
    open.clear();
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
      entry
          .proposed(proposal.text())
          .ifPresent(p -> did(m -> m.acceptProposal(p.typed(), p.length(), p.why(), p.card())));
    } else if (command instanceof Command.CannotTake cannot) {
      did(m -> m.notPossible(cannot.reason()));
    } else if (command instanceof Command.Do asked) {
      leaveKeys();
      beyond.run(asked.errand());
    } else if (command instanceof Command.Answer answer) {
      beyond.answer(answer.text());
    } else if (command instanceof Command.Ignored ignored) {
      say(place.words().said(ignored.sentence()));
    } else if (command instanceof Command.Plain plain) {
      follow(plain);
    }
  }

  private void follow(Command.Plain command) {
    switch (command) {
      case SHOW_REASONS -> entry.cover(Showing.REASONS);
      case HIDE_REASONS, NO_STOP, NO_ANSWER -> leave();
      case ANOTHER_TAKE -> move(Measuring::anotherTake);
      case UNDO -> {
        if (!beyond.undoneElsewhere()) {
          did(Measuring::undo);
        }
      }
      case RECORD_CALL -> beyond.recordCall();
      case PREVIOUS -> move(Measuring::previous);
      case LIST_ERRANDS -> {
        leaveKeys();
        beyond.listErrands();
      }
      case ASK_STOP -> entry.cover(Showing.STOP_QUESTION);
      case STOP -> {
        leave();
        beyond.stop();
      }
      case STAY -> {}
    }
  }

  /** The keys that asked for something are done with, and no half-typed reading. */
  private void leaveKeys() {
    leave();
    keep("");
  }

  private void edit(String text) {
    boolean half = entry.uncovered();
    entry.edit(text, passes());
    if (half) {
      keep(text);
    }
  }

  private void keep(String text) {
    passes().ifPresent(p -> open.keep(p, text));
  }

  private void take(String burst) {
    new CaliperText(entry.card())
        .burst(burst)
        .<CaliperInput>fold(
            read -> {
              came(new HeldBurst(burst, read.values()));
              return read;
            },
            refused -> {
              say(place.words().said(refused.reason()));
              return refused;
            });
  }

  /** One value with its line end goes on, unless it is odd; anything else waits for one Enter. */
  private void came(HeldBurst burst) {
    List<Warning> odd = entry.odd(burst, passes());
    if (burst.goesOn() && odd.isEmpty()) {
      did(m -> m.acceptBurst(burst.burst(), entry.card()));
    } else {
      entry.hold(burst, odd, place.words().get("burst.waits", burst.values().size()));
    }
  }

  /** Goes to another field; says why where it can't, and keeps nothing of the keys that asked. */
  private void move(Function<Measuring, Optional<String>> command) {
    measuring.ifPresent(m -> command.apply(m).ifPresentOrElse(this::stays, this::moved));
  }

  private void stays(String why) {
    entry.next(why);
    keep("");
  }

  /** Records something; says why where it can't. */
  private void did(Function<Measuring, Optional<String>> command) {
    measuring.ifPresent(
        m -> {
          Map<MeasurementCode, Double> before = m.passes().values();
          Optional<String> refused = command.apply(m);
          if (refused.isPresent()) {
            entry.refused(refused.get());
            return;
          }
          moved();
          if (!before.equals(m.passes().values())) {
            beyond.changed();
          }
          beyond.recorded();
        });
  }

  private void moved() {
    Optional<PassWords> now = passes().map(p -> new PassWords(place, p));
    entry.next(now.map(PassWords::notice).orElse(""));
    current.set(passes().flatMap(Passes::currentMeasurement));
    beside.set(
        entry
            .beside(passes().flatMap(Passes::current))
            .map(o -> said(o.getKey(), o.getValue()))
            .orElse(""));
    rows.setAll(now.map(PassWords::rows).orElse(List.of()));
    keep("");
  }

  private String said(Side side, double mm) {
    return place
        .words()
        .get("beside.value", place.words().get("side." + side), place.numbers().upTo(mm, 2));
  }
}
