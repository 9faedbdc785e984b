package org.comparanda.gui.shelf.keeping;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.comparanda.bone.Element;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BoneMove;
import org.comparanda.register.BonePlace;
import org.comparanda.register.Change;
import org.comparanda.register.ChangeNote;
import org.comparanda.statistics.Outcome;

/** A bone that stands under the wrong element, side or portion is moved, by whom and why. */
public final class MoveViewModel {
  private final KeeperRoom room;
  private final Signature signature;
  private final Executor work;
  private final Executor ui;
  private final Consumer<Optional<AnimalCard>> moved;
  private final ObjectProperty<Optional<BonePlace>> from =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Element>> element =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Side> side = new SimpleObjectProperty<>(Side.LEFT);
  private final ObjectProperty<Portion> portion = new SimpleObjectProperty<>(Portion.WHOLE);
  private final StringProperty sentence = new SimpleStringProperty("");

  /**
   * @param moved is told the card as it stands after a move
   */
  public MoveViewModel(
      KeeperRoom room,
      Signature signature,
      Executor work,
      Executor ui,
      Consumer<Optional<AnimalCard>> moved) {
    this.room = room;
    this.signature = signature;
    this.work = work;
    this.ui = ui;
    this.moved = moved;
    element.addListener((o, was, is) -> is.ifPresent(this::fit));
  }

  /** The side that an element of the midline, or a paired one, can have. */
  private void fit(Element chosen) {
    boolean axial = chosen.symmetry() == Symmetry.AXIAL;
    if (axial != (side.get() == Side.AXIAL)) {
      side.set(axial ? Side.AXIAL : Side.LEFT);
    }
  }

  /** Where the bone stands now; the target begins as the same. */
  public void show(Optional<BonePlace> place) {
    from.set(place);
    sentence.set("");
    place.ifPresent(
        p -> {
          element.set(room.protocol().element(p.element()));
          side.set(p.side());
          portion.set(p.portion());
        });
  }

  /** Where the bone stands now. */
  public ObjectProperty<Optional<BonePlace>> fromProperty() {
    return from;
  }

  public ObjectProperty<Optional<Element>> elementProperty() {
    return element;
  }

  public ObjectProperty<Side> sideProperty() {
    return side;
  }

  public ObjectProperty<Portion> portionProperty() {
    return portion;
  }

  /** What came of the last move. */
  public StringProperty sentenceProperty() {
    return sentence;
  }

  KeeperRoom room() {
    return room;
  }

  Signature signature() {
    return signature;
  }

  List<Element> elements() {
    return room.protocol().elements().stream()
        .filter(e -> !room.protocol().of(e.key()).isEmpty())
        .toList();
  }

  /** Moves the bone of this card, or says why not. */
  public void move(AnimalCard card) {
    Optional<ChangeNote> note = signature.note();
    if (from.get().isEmpty() || element.get().isEmpty()) {
      sentence.set(room.words().get("move.which"));
      return;
    }
    if (note.isEmpty()) {
      sentence.set(room.words().get("signature.missing"));
      return;
    }
    BonePlace to = new BonePlace(element.get().get().key(), side.get(), portion.get());
    Outcome<BoneMove> move = BoneMove.of(from.get().get(), to, room.protocol());
    work.execute(
        () -> {
          Outcome<List<Change>> done = move.then(m -> room.register().move(card, m, note.get()));
          Optional<AnimalCard> now = room.register().card(card.id());
          ui.execute(
              () -> {
                if (done.value().isPresent()) {
                  signature.used();
                  moved.accept(now);
                }
                sentence.set(
                    done.fold(
                        changes -> said(move.value().orElseThrow(), card),
                        none -> room.words().said(none.reason() + " " + none.remedy())));
              });
        });
  }

  private String said(BoneMove move, AnimalCard before) {
    String done = room.words().get("move.done", named(move.from()), named(move.to()));
    List<String> strangers =
        move.strangers(before, room.protocol()).stream().map(MeasurementCode::value).toList();
    return strangers.isEmpty()
        ? done
        : done
            + " "
            + room.words()
                .get(
                    "move.strangers",
                    String.join(", ", strangers),
                    room.element(move.to().element()));
  }

  /** A place in the words of the screen. */
  public String named(BonePlace place) {
    String name =
        room.element(place.element()) + ", " + room.words().get("side." + lower(place.side()));
    return place.portion() == Portion.WHOLE
        ? name
        : name + ", " + room.words().get("portion." + lower(place.portion()));
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(java.util.Locale.ROOT);
  }
}
