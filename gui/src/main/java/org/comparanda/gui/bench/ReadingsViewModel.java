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
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperInput;
import org.comparanda.capture.CaliperText;
import org.comparanda.capture.Command;
import org.comparanda.capture.Draft;
import org.comparanda.capture.Errand;
import org.comparanda.capture.FieldState;
import org.comparanda.capture.FieldState.Showing;
import org.comparanda.capture.Keys;
import org.comparanda.capture.Measuring;
import org.comparanda.capture.NamedKey;
import org.comparanda.capture.Passes;
import org.comparanda.capture.Place;
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
  /** What a key may ask for that is not about readings of this bone alone. */
  interface Beyond {
    /** The values changed; what follows from them is to be reckoned anew. */
    void changed();

    /** Something was recorded, or taken back; another bone may be due. */
    void recorded();

    /** Something is to be taken back: whether it was no reading and is taken back already. */
    boolean undoneElsewhere();

    void recordCall();

    void run(Errand errand);

    void listErrands();

    void answer(String text);

    void stop();
  }

  static final String BENCH = "bench 1";

  private final BenchPlace place;
  private final Beyond beyond;
  private final OpenField open;
  private final ObservableList<ReadingRow> rows = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Measurement>> current =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<FieldState> field = new SimpleObjectProperty<>(FieldState.empty());
  private final StringProperty message = new SimpleStringProperty("");
  private final ObjectProperty<List<Warning>> warnings = new SimpleObjectProperty<>(List.of());
  private Optional<Measuring> measuring = Optional.empty();
  private Optional<TrayBone> bone = Optional.empty();
  private Optional<HeldBurst> held = Optional.empty();
  private FieldText meaning = new FieldText(new ShelfRanges(Map.of()), List.of(), Optional.empty());

  ReadingsViewModel(BenchPlace place, Beyond beyond) {
    this.place = place;
    this.beyond = beyond;
    open = new OpenField(BENCH, place.drafts());
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
    boolean onField =
        field.get().showing() == Showing.FIELD || field.get().showing() == Showing.PROPOSAL;
    if (key == NamedKey.ENTER && held.isPresent() && onField) {
      String burst = held.get().burst();
      did(m -> m.acceptBurst(burst, meaning.card()));
    } else {
      follow(Keys.pressed(field.get(), key));
    }
  }

  /** A burst came from a caliper. */
  public void burst(String text) {
    follow(Keys.burst(field.get(), text));
  }

  /** The caliper in hand is this one from now on; none when values are typed by hand. */
  void caliper(Optional<CaliperCard> card) {
    meaning = new FieldText(meaning.ranges(), meaning.partRules(), card);
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
    return passes().filter(Passes::untouched).isPresent();
  }

  /** Where the measuring of the bone in hand stands. */
  Optional<Passes> passes() {
    return measuring.map(Measuring::passes);
  }

  /** Brings a bone to the bench, its readings as they were left. */
  void open(TrayBone next, Passes restored, PersonId person, ShelfRanges shelf) {
    bone = Optional.of(next);
    meaning = new FieldText(shelf, place.protocol().partRules(next.element()), meaning.card());
    measuring = Optional.of(new Measuring(restored, place.readings(), place.clock(), person));
    moved();
  }

  /** Brings back the field and the half-typed text that were left, if they still have a place. */
  void resume(Draft left) {
    Optional<Draft> fitting = bone.flatMap(b -> passes().flatMap(p -> open.fitting(b, p, left)));
    fitting.ifPresent(
        draft -> {
          if (!passes().flatMap(Passes::current).equals(Optional.of(draft.place()))) {
            move(m -> m.goTo(draft.place().code()));
          }
          edit(draft.text());
        });
  }

  /** Opens a question over the field; digits answer it. */
  void ask() {
    field.set(new FieldState("", Showing.ASKED));
  }

  /** Closes whatever lies over the field. */
  void leave() {
    field.set(FieldState.empty());
  }

  /** Says a sentence under the readings. */
  void say(String sentence) {
    message.set(sentence);
  }

  /** Clears the bench: nothing can be measured. */
  void close() {
    bone = Optional.empty();
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
      propose(proposal.text());
    } else if (command instanceof Command.CannotTake cannot) {
      did(m -> m.notPossible(cannot.reason()));
    } else if (command instanceof Command.Do asked) {
      leave();
      beyond.run(asked.errand());
    } else if (command instanceof Command.Answer answer) {
      beyond.answer(answer.text());
    } else if (command instanceof Command.Ignored ignored) {
      message.set(ignored.sentence());
    } else if (command instanceof Command.Plain plain) {
      follow(plain);
    }
  }

  private void follow(Command.Plain command) {
    switch (command) {
      case SHOW_REASONS -> field.set(new FieldState("", Showing.REASONS));
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
        leave();
        beyond.listErrands();
      }
      case ASK_STOP -> field.set(new FieldState("", Showing.STOP_QUESTION));
      case STOP -> {
        leave();
        beyond.stop();
      }
      case STAY -> {}
    }
  }

  private void edit(String text) {
    held = Optional.empty();
    message.set("");
    Showing over = field.get().showing();
    if (over == Showing.REASONS || over == Showing.ASKED) {
      field.set(field.get().withText(text));
      return;
    }
    keep(text);
    show(text, passes().map(p -> meaning.odd(p, text)).orElse(List.of()));
  }

  private void show(String text, List<Warning> odd) {
    warnings.set(odd);
    boolean proposed = odd.stream().anyMatch(w -> w.proposal().isPresent());
    field.set(new FieldState(text, proposed ? Showing.PROPOSAL : Showing.FIELD));
  }

  private void keep(String text) {
    bone.ifPresent(b -> passes().ifPresent(p -> open.keep(b, p, text)));
  }

  private void take(String burst) {
    new CaliperText(meaning.card())
        .burst(burst)
        .<CaliperInput>fold(
            read -> {
              came(new HeldBurst(burst, read.values()));
              return read;
            },
            refused -> {
              message.set(refused.reason());
              return refused;
            });
  }

  /** One value with its line end goes on, unless it is odd; anything else waits for one Enter. */
  private void came(HeldBurst burst) {
    List<Warning> odd =
        burst.single().flatMap(v -> passes().map(p -> meaning.odd(p, v))).orElse(List.of());
    if (burst.goesOn() && odd.isEmpty()) {
      did(m -> m.acceptBurst(burst.burst(), meaning.card()));
    } else {
      held = Optional.of(burst);
      show(burst.text(), odd);
      message.set(place.words().get("burst.waits", burst.values().size()));
    }
  }

  private void propose(String text) {
    Optional<Warning> warning =
        warnings.get().stream().filter(w -> w.proposal().isPresent()).findFirst();
    Optional<CaliperCard> card = held.flatMap(came -> meaning.card());
    held.flatMap(HeldBurst::single)
        .or(() -> FieldText.value(text))
        .ifPresent(
            value ->
                warning.ifPresent(
                    w ->
                        w.proposal()
                            .ifPresent(
                                length ->
                                    did(
                                        m ->
                                            m.acceptProposal(value, length, w.sentence(), card)))));
  }

  /** Goes to another field; says why where it can't. */
  private void move(Function<Measuring, Optional<String>> command) {
    measuring.ifPresent(m -> command.apply(m).ifPresentOrElse(this::refused, this::moved));
  }

  /** Records something; says why where it can't. */
  private void did(Function<Measuring, Optional<String>> command) {
    measuring.ifPresent(
        m -> {
          Map<MeasurementCode, Double> before = m.passes().values();
          Optional<String> refused = command.apply(m);
          if (refused.isPresent()) {
            refused(refused.get());
            return;
          }
          moved();
          if (!before.equals(m.passes().values())) {
            beyond.changed();
          }
          beyond.recorded();
        });
  }

  private void refused(String sentence) {
    field.set(new FieldState(field.get().text(), Showing.FIELD));
    message.set(sentence);
  }

  private void moved() {
    held = Optional.empty();
    warnings.set(List.of());
    leave();
    message.set(passes().map(this::notice).orElse(""));
    current.set(passes().flatMap(Passes::currentMeasurement));
    rows.setAll(passes().map(this::lines).orElse(List.of()));
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
