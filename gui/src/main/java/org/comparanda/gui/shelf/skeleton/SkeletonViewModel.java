package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.Element;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Side;
import org.comparanda.capture.Draft;
import org.comparanda.capture.Passes;
import org.comparanda.capture.warning.ShelfRanges;
import org.comparanda.gui.capture.CaliperViewModel;
import org.comparanda.gui.capture.QuestionViewModel;
import org.comparanda.gui.capture.ReadingsViewModel;
import org.comparanda.gui.capture.SketchOf;
import org.comparanda.gui.capture.StateViewModel;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.gui.shelf.keeping.Signature;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.SkeletonBone;

/**
 * A skeleton of the shelf being measured with the Bench's own capture: element after element, left
 * and right side by side. Every reading is in the log before the focus moves; the values land on
 * the animal's card when the person says so.
 */
public final class SkeletonViewModel {
  /** Which bones of an element are measured. */
  public enum Hands {
    BOTH,
    LEFT,
    RIGHT
  }

  private final SkeletonRoom room;
  private final Signature signature;
  private final Executor work;
  private final Executor ui;
  private final Runnable afterwards;
  private final ReadingsViewModel readings;
  private final StateViewModel state;
  private final QuestionViewModel question;
  private final CaliperViewModel caliper;

  private final ObjectProperty<Optional<AnimalCard>> card =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Element>> element =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Hands> hands = new SimpleObjectProperty<>(Hands.BOTH);
  private final ObjectProperty<Side> side = new SimpleObjectProperty<>(Side.LEFT);
  private final ObservableList<SkeletonRow> rows = FXCollections.observableArrayList();
  private final StringProperty sentence = new SimpleStringProperty("");
  private final BooleanProperty definitionLarge = new SimpleBooleanProperty(false);
  private final BooleanProperty moving = new SimpleBooleanProperty(false);
  private final BooleanProperty keysShown = new SimpleBooleanProperty(false);
  private Shelf others = new Shelf(List.of());

  /**
   * Nothing is measured yet.
   *
   * @param afterwards runs on {@code ui} after values landed on a card
   */
  public SkeletonViewModel(
      SkeletonRoom room, Signature signature, Executor work, Executor ui, Runnable afterwards) {
    this.room = room;
    this.signature = signature;
    this.work = work;
    this.ui = ui;
    this.afterwards = afterwards;
    readings = new ReadingsViewModel(room.reading(), new SkeletonKeys(this));
    state = new StateViewModel(room.keeper().protocol(), this::say, this::sayState);
    question = new QuestionViewModel(readings);
    caliper =
        new CaliperViewModel(room.reading(), Words.of("caliper", room.reading().words().locale()));
    readings.caliper(caliper.inHandProperty().get());
    caliper.inHandProperty().addListener((o, was, is) -> readings.caliper(is));
    signature.whoProperty().addListener((o, was, is) -> signedAnew());
  }

  public ReadOnlyObjectProperty<Optional<AnimalCard>> cardProperty() {
    return card;
  }

  public ReadOnlyObjectProperty<Optional<Element>> elementProperty() {
    return element;
  }

  /** Which bones of the element are measured. */
  public ReadOnlyObjectProperty<Hands> handsProperty() {
    return hands;
  }

  /** The side of the bone in hand. */
  public ReadOnlyObjectProperty<Side> sideProperty() {
    return side;
  }

  public ObservableList<SkeletonRow> rows() {
    return rows;
  }

  /** What came of the last thing done to the card. */
  public StringProperty sentenceProperty() {
    return sentence;
  }

  /** Whether the definition is shown large. */
  public BooleanProperty definitionLargeProperty() {
    return definitionLarge;
  }

  /** Whether a bone is being moved to another element or side. */
  public BooleanProperty movingProperty() {
    return moving;
  }

  /** Whether the table of all keys is shown. */
  public BooleanProperty keysShownProperty() {
    return keysShown;
  }

  public ReadingsViewModel readings() {
    return readings;
  }

  public StateViewModel state() {
    return state;
  }

  public QuestionViewModel question() {
    return question;
  }

  public CaliperViewModel caliper() {
    return caliper;
  }

  SkeletonRoom room() {
    return room;
  }

  Signature signature() {
    return signature;
  }

  /** The elements that can be measured, in the order of the protocol. */
  public List<Element> elements() {
    return room.keeper().protocol().elements().stream()
        .filter(e -> !room.keeper().protocol().of(e.key()).isEmpty())
        .toList();
  }

  /** Opens an animal: what lay open of it comes back, else its first measurable element. */
  public void open(AnimalId id) {
    sentence.set("");
    work.execute(
        () -> {
          Optional<AnimalCard> found = room.keeper().register().card(id);
          Shelf shelf =
              new Shelf(
                  room.keeper().animals().shelf().animals().stream()
                      .filter(a -> !a.id().equals(id))
                      .toList());
          ui.execute(
              () -> {
                card.set(found);
                others = shelf;
                Optional<Draft> left = new Unfinished(room).of(id);
                choose(left.flatMap(this::elementOf).orElseGet(() -> first(found)));
                left.ifPresent(this::resume);
              });
        });
  }

  /** The animal whose measuring was left in the middle. */
  public Optional<AnimalId> unfinished() {
    return new Unfinished(room).bone().map(SkeletonBone::animal);
  }

  private Optional<Element> elementOf(Draft left) {
    return elements().stream().filter(e -> e.key().equals(left.element())).findFirst();
  }

  private void resume(Draft left) {
    boolean here = element.get().filter(e -> e.key().equals(left.element())).isPresent();
    boolean named = !signature.whoProperty().get().isBlank();
    room.skeletons()
        .bone(left.bone())
        .filter(b -> here && named)
        .ifPresent(
            b -> {
              take(b.held().side());
              readings.resume(left);
            });
  }

  private Element first(Optional<AnimalCard> found) {
    List<ShelfBone> bones = found.map(c -> c.animal().bones()).orElse(List.of());
    return elements().stream()
        .filter(e -> bones.stream().anyMatch(b -> b.element().equals(e.key())))
        .findFirst()
        .orElse(elements().get(0));
  }

  /** Takes up an element, both sides where it has two. */
  public void choose(Element chosen) {
    element.set(Optional.of(chosen));
    hands.set(Hands.BOTH);
    begin();
  }

  /** The element after this one in the protocol, or before it. */
  public void step(int by) {
    element
        .get()
        .map(e -> elements().indexOf(e) + by)
        .filter(at -> at >= 0 && at < elements().size())
        .ifPresent(at -> choose(elements().get(at)));
  }

  /** Measures both bones in turn, or one of them. */
  public void choose(Hands other) {
    hands.set(other);
    begin();
  }

  /** Another name: what lies open stays, half-typed text included. */
  private void signedAnew() {
    Optional<Draft> typed = Unfinished.typed(readings);
    Optional<Draft> left = card.get().flatMap(c -> new Unfinished(room).of(c.id()));
    begin();
    typed.or(() -> left).ifPresent(this::resume);
  }

  /** Opens the bone that is due. */
  void begin() {
    Optional<ElementBones> bones = bones();
    if (bones.isEmpty() || signature.whoProperty().get().isBlank()) {
      if (readings.passes().isPresent()) {
        readings.close();
      }
      state.leave();
      rows.clear();
      readings.say(room.words().get("skeleton.who"));
      return;
    }
    take(turns(bones.get()).due());
  }

  private Turns turns(ElementBones bones) {
    return new Turns(bones, hands.get());
  }

  /** The bones of the element in hand. */
  Optional<ElementBones> bones() {
    return card.get().flatMap(c -> element.get().map(e -> new ElementBones(room, c, e)));
  }

  private void take(Side next) {
    bones()
        .ifPresent(
            bones -> {
              side.set(next);
              definitionLarge.set(false);
              state.show(bones.bone(next).held());
              measure(bones);
              if (bones.said(next).isEmpty() && readings.untouched()) {
                state.ask();
              } else {
                state.leave();
              }
            });
  }

  private void measure(ElementBones bones) {
    readings.open(
        bones.passes(side.get()),
        person(),
        ShelfRanges.of(others, bones.element().key()),
        bones.beside(side.get()));
    show();
  }

  private PersonId person() {
    return new PersonId(signature.whoProperty().get().strip());
  }

  /** Shows the rows anew; says what is next when nothing is due any more. */
  void show() {
    Optional<Passes> now = readings.passes();
    rows.setAll(
        bones()
            .flatMap(b -> now.map(p -> new SkeletonRows(b, side.get(), p).rows()))
            .orElse(List.of()));
    if (now.filter(p -> p.current().isEmpty() && !p.values().isEmpty()).isPresent()) {
      readings.say(room.words().get("skeleton.over"));
    }
  }

  /** After something was recorded: the bone that is due comes to hand. */
  void next() {
    bones().flatMap(b -> turns(b).after(side.get())).ifPresentOrElse(this::take, this::show);
  }

  /** Before the last reading is taken back: the bone that it is of comes to hand. */
  void beforeUndo() {
    bones()
        .flatMap(b -> turns(b).newest())
        .filter(newest -> newest != side.get())
        .ifPresent(this::take);
  }

  /** Asks for the state of the bone in hand again. */
  void askStateAnew() {
    state.ask();
  }

  private void say(HeldBone said) {
    if (bones().isEmpty() || signature.whoProperty().get().isBlank()) {
      readings.say(room.words().get("skeleton.who"));
      return;
    }
    ElementBones bones = bones().get();
    Optional<String> refused = new BoneSaying(bones, side.get()).keep(said, person());
    if (refused.isPresent()) {
      state.show(bones.bone(side.get()).held());
      readings.say(refused.get());
    } else {
      measure(bones);
    }
  }

  private void sayState() {
    bones().map(b -> new BoneSaying(b, side.get()).recorded()).ifPresent(readings::say);
  }

  /** Puts the values on the card, when no field is open. */
  public void store() {
    if (bones().isEmpty() || signature.whoProperty().get().isBlank()) {
      sentence.set(room.words().get("skeleton.who"));
      return;
    }
    ElementBones bones = bones().get();
    PersonId who = person();
    work.execute(
        () -> {
          String said = new Landing(bones).put(who);
          Optional<AnimalCard> now = room.keeper().register().card(bones.card().id());
          ui.execute(
              () -> {
                sentence.set(said);
                card.set(now);
                show();
                afterwards.run();
              });
        });
  }

  /** A bone of this animal was moved: everything is read anew. */
  public void moved(Optional<AnimalCard> now) {
    card.set(now);
    moving.set(false);
    begin();
    afterwards.run();
  }

  /** The drawing of the bone in hand, with the jaws at the measurement that waits. */
  Optional<BoneSketch> sketch() {
    return bones()
        .map(
            b ->
                new SketchOf(room.outlines())
                    .measured(
                        readings,
                        b.element().key(),
                        state.portionProperty().get(),
                        room.reading().words()));
  }
}
