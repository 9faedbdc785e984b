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
import org.comparanda.bone.Element;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.capture.Draft;
import org.comparanda.gui.shelf.keeping.Signature;
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
  private final InHandViewModel inHand;

  private final ObjectProperty<Optional<AnimalCard>> card =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Element>> element =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Hands> hands = new SimpleObjectProperty<>(Hands.BOTH);
  private final ObjectProperty<Pieces> pieces = new SimpleObjectProperty<>(Pieces.NONE);
  private final StringProperty sentence = new SimpleStringProperty("");
  private final BooleanProperty moving = new SimpleBooleanProperty(false);
  private final BooleanProperty keysShown = new SimpleBooleanProperty(false);

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
    inHand =
        new InHandViewModel(
            room,
            signature,
            new SkeletonKeys(this),
            this::bones,
            hands,
            (side, part) -> pieces.set(pieces.get().with(side, part)));
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

  /** The bone in hand, its readings and those of the other side. */
  public InHandViewModel inHand() {
    return inHand;
  }

  /** What came of the last thing done to the card. */
  public StringProperty sentenceProperty() {
    return sentence;
  }

  /** Whether a bone is being moved to another element or side. */
  public BooleanProperty movingProperty() {
    return moving;
  }

  /** Whether the table of all keys is shown. */
  public BooleanProperty keysShownProperty() {
    return keysShown;
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
                inHand.against(shelf);
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
              pieces.set(pieces.get().with(b.held().side(), b.held().portion()));
              inHand.take(b.held().side());
              inHand.readings().resume(left);
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
    pieces.set(Pieces.NONE);
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

  /** Which piece of each side is meant. */
  ReadOnlyObjectProperty<Pieces> piecesProperty() {
    return pieces;
  }

  /** The parts of the side in hand that are there. */
  public List<Portion> parts() {
    return bones().map(of -> of.parts(inHand.sideProperty().get())).orElse(List.of());
  }

  /** Takes that piece of the side in hand, and goes on with this side alone. */
  public void choose(Portion part) {
    Side side = inHand.sideProperty().get();
    pieces.set(pieces.get().with(side, part));
    hands.set(SkeletonKeys.one(side));
    inHand.take(side);
  }

  /** Another piece of the side in hand: its part is the first that is not there yet. */
  public void anotherPiece() {
    List<Portion> there = parts();
    Optional<Portion> free = Pieces.free(there);
    boolean whole = there.isEmpty() || there.contains(Portion.WHOLE);
    if (signature.whoProperty().get().isBlank()) {
      begin();
    } else if (whole || free.isEmpty()) {
      String why = whole ? "skeleton.piece.whole" : "skeleton.piece.none";
      inHand.readings().say(room.words().get(why));
    } else {
      choose(free.get());
    }
  }

  /** Another name: what lies open stays, half-typed text included. */
  private void signedAnew() {
    Optional<Draft> typed = Unfinished.typed(inHand.readings());
    Optional<Draft> left = card.get().flatMap(c -> new Unfinished(room).of(c.id()));
    begin();
    typed.or(() -> left).ifPresent(this::resume);
  }

  /** Opens the bone that is due. */
  void begin() {
    inHand.begin();
  }

  /** The bones of the element in hand. */
  Optional<ElementBones> bones() {
    return card.get()
        .flatMap(c -> element.get().map(e -> new ElementBones(room, c, e, pieces.get())));
  }

  /** Puts the values on the card, when no field is open. */
  public void store() {
    if (bones().isEmpty() || signature.whoProperty().get().isBlank()) {
      sentence.set(room.words().get("skeleton.who"));
      return;
    }
    ElementBones bones = bones().get();
    PersonId who = new PersonId(signature.whoProperty().get().strip());
    work.execute(
        () -> {
          String said = new Landing(bones).put(who);
          Optional<AnimalCard> now = room.keeper().register().card(bones.card().id());
          ui.execute(
              () -> {
                sentence.set(said);
                card.set(now);
                inHand.show();
                afterwards.run();
              });
        });
  }

  /** Whether a bone of this animal may be human: nothing of it is measured then. */
  public boolean stopped() {
    return card.get().filter(c -> c.standing().setAside()).isPresent();
  }

  /** The bone in hand may be human: it is set aside at once, and its animal with it. */
  void setAside() {
    bones()
        .ifPresent(
            of -> {
              new SettingAside(of).put(inHand.sideProperty().get(), signature.whoProperty().get());
              card.set(room.keeper().register().card(of.card().id()));
              begin();
              afterwards.run();
            });
  }

  /** A bone of this animal was moved: everything is read anew. */
  public void moved(Optional<AnimalCard> now) {
    card.set(now);
    moving.set(false);
    pieces.set(Pieces.NONE);
    begin();
    afterwards.run();
  }
}
