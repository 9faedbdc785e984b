package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.capture.Passes;
import org.comparanda.capture.warning.ShelfRanges;
import org.comparanda.gui.capture.CaliperViewModel;
import org.comparanda.gui.capture.QuestionViewModel;
import org.comparanda.gui.capture.ReadingsViewModel;
import org.comparanda.gui.capture.SketchOf;
import org.comparanda.gui.capture.StateViewModel;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.gui.shelf.keeping.Signature;
import org.comparanda.gui.shelf.skeleton.SkeletonViewModel.Hands;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.Shelf;

/**
 * The bone of a skeleton that is in hand: what is said of it, its readings, the rows of both sides.
 */
public final class InHandViewModel {
  private final SkeletonRoom room;
  private final Signature signature;
  private final Supplier<Optional<ElementBones>> bones;
  private final ReadOnlyObjectProperty<Hands> hands;
  private final BiConsumer<Side, Portion> meant;
  private final ReadingsViewModel readings;
  private final StateViewModel state;
  private final QuestionViewModel question;
  private final CaliperViewModel caliper;
  private final ObjectProperty<Side> side = new SimpleObjectProperty<>(Side.LEFT);
  private final ObservableList<SkeletonRow> rows = FXCollections.observableArrayList();
  private final BooleanProperty definitionLarge = new SimpleBooleanProperty(false);
  private Shelf others = new Shelf(List.of());

  /**
   * No bone is in hand yet.
   *
   * @param bones of the element that is measured
   * @param hands which of them
   * @param meant hears which part a bone was said to be
   */
  InHandViewModel(
      SkeletonRoom room,
      Signature signature,
      SkeletonKeys keys,
      Supplier<Optional<ElementBones>> bones,
      ReadOnlyObjectProperty<Hands> hands,
      BiConsumer<Side, Portion> meant) {
    this.room = room;
    this.signature = signature;
    this.bones = bones;
    this.hands = hands;
    this.meant = meant;
    readings = new ReadingsViewModel(room.reading(), keys);
    state = new StateViewModel(room.keeper().protocol(), this::say, this::sayState);
    question = new QuestionViewModel(readings);
    caliper =
        new CaliperViewModel(room.reading(), Words.of("caliper", room.reading().words().locale()));
    readings.caliper(caliper.inHandProperty().get());
    caliper.inHandProperty().addListener((o, was, is) -> readings.caliper(is));
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

  /** The side of the bone in hand. */
  public ReadOnlyObjectProperty<Side> sideProperty() {
    return side;
  }

  /** One row a measurement, both sides beside each other. */
  public ObservableList<SkeletonRow> rows() {
    return rows;
  }

  /** Whether the definition is shown large. */
  public BooleanProperty definitionLargeProperty() {
    return definitionLarge;
  }

  /** Readings are held against these animals: the shelf without the one that is measured. */
  void against(Shelf shelf) {
    others = shelf;
  }

  /** Takes the bone that is due in hand; none without a name or an element. */
  void begin() {
    boolean stopped = bones.get().filter(b -> b.card().standing().setAside()).isPresent();
    if (stopped || bones.get().isEmpty() || signature.whoProperty().get().isBlank()) {
      if (readings.passes().isPresent()) {
        readings.close();
      }
      state.leave();
      rows.clear();
      readings.say(stopped ? "" : room.words().get("skeleton.who"));
    } else {
      take(turns(bones.get().get()).due());
    }
  }

  private Turns turns(ElementBones of) {
    return new Turns(of, hands.get());
  }

  /** Takes the bone of a side in hand; its state is asked before its first reading. */
  void take(Side next) {
    bones
        .get()
        .ifPresent(
            of -> {
              side.set(next);
              definitionLarge.set(false);
              state.show(of.bone(next).held());
              measure(of);
              if (of.said(next).isEmpty() && readings.untouched()) {
                state.ask();
              } else {
                state.leave();
              }
            });
  }

  private void measure(ElementBones of) {
    readings.open(
        of.passes(side.get()),
        person(),
        ShelfRanges.of(others, of.element().key()),
        of.beside(side.get()));
    show();
  }

  private PersonId person() {
    return new PersonId(signature.whoProperty().get().strip());
  }

  /** Shows the rows anew; says what is next when nothing is due any more. */
  void show() {
    Optional<Passes> now = readings.passes();
    rows.setAll(
        bones
            .get()
            .flatMap(b -> now.map(p -> new SkeletonRows(b, side.get(), p).rows()))
            .orElse(List.of()));
    if (now.filter(p -> p.current().isEmpty() && !p.values().isEmpty()).isPresent()) {
      readings.say(room.words().get("skeleton.over"));
    }
  }

  /** After something was recorded: the bone that is due comes to hand. */
  void next() {
    bones.get().flatMap(b -> turns(b).after(side.get())).ifPresentOrElse(this::take, this::show);
  }

  /** Before the last reading is taken back: the bone that it is of comes to hand. */
  void beforeUndo() {
    bones
        .get()
        .flatMap(b -> turns(b).newest())
        .filter(newest -> newest != side.get())
        .ifPresent(this::take);
  }

  private void say(HeldBone said) {
    Optional<ElementBones> of = bones.get();
    if (of.isEmpty() || signature.whoProperty().get().isBlank()) {
      readings.say(room.words().get("skeleton.who"));
      return;
    }
    if (of.get().card().standing().setAside()) {
      return;
    }
    Optional<String> refused = new BoneSaying(of.get(), side.get()).keep(said, person());
    if (refused.isPresent()) {
      state.show(of.get().bone(side.get()).held());
      readings.say(refused.get());
    } else {
      meant.accept(side.get(), said.portion());
      bones.get().ifPresent(this::measure);
    }
  }

  private void sayState() {
    bones.get().map(b -> new BoneSaying(b, side.get()).recorded()).ifPresent(readings::say);
  }

  /** The drawing of the bone in hand, with the jaws at the measurement that waits. */
  Optional<BoneSketch> sketch() {
    return bones
        .get()
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
