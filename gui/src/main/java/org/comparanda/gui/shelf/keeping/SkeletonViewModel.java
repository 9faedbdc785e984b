package org.comparanda.gui.shelf.keeping;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.Element;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.capture.Measuring;
import org.comparanda.capture.NotPossible;
import org.comparanda.capture.PassRules;
import org.comparanda.capture.Passes;
import org.comparanda.check.SideTolerance;
import org.comparanda.gui.text.Numbers;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BoneEdit;
import org.comparanda.register.Change;
import org.comparanda.register.ChangeNote;
import org.comparanda.statistics.Outcome;

/**
 * A skeleton of the shelf being measured: element after element, left and right side by side, in
 * the passes of the Bench. Every reading is in the log before the focus moves; the values land on
 * the animal's card when the person says so.
 */
public final class SkeletonViewModel {
  private final KeeperRoom room;
  private final Signature signature;
  private final Executor work;
  private final Executor ui;
  private final Runnable afterwards;
  private final Numbers numbers;

  private final ObjectProperty<Optional<AnimalCard>> card =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Element>> element =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Side> side = new SimpleObjectProperty<>(Side.LEFT);
  private final ObservableList<SkeletonRow> rows = FXCollections.observableArrayList();
  private final StringProperty field = new SimpleStringProperty("");
  private final StringProperty prompt = new SimpleStringProperty("");
  private final StringProperty sentence = new SimpleStringProperty("");
  private final Map<Side, Measuring> measured = new EnumMap<>(Side.class);

  /**
   * Nothing is measured yet.
   *
   * @param afterwards runs on {@code ui} after values landed on a card
   */
  public SkeletonViewModel(
      KeeperRoom room, Signature signature, Executor work, Executor ui, Runnable afterwards) {
    this.room = room;
    this.signature = signature;
    this.work = work;
    this.ui = ui;
    this.afterwards = afterwards;
    numbers = new Numbers(room.locale());
    signature.whoProperty().addListener((o, was, is) -> begin());
  }

  public ReadOnlyObjectProperty<Optional<AnimalCard>> cardProperty() {
    return card;
  }

  public ReadOnlyObjectProperty<Optional<Element>> elementProperty() {
    return element;
  }

  /** The side that is being measured. */
  public ReadOnlyObjectProperty<Side> sideProperty() {
    return side;
  }

  public ObservableList<SkeletonRow> rows() {
    return rows;
  }

  /** What the field holds. */
  public StringProperty fieldProperty() {
    return field;
  }

  /** What is to be measured now. */
  public StringProperty promptProperty() {
    return prompt;
  }

  /** What came of the last thing done. */
  public StringProperty sentenceProperty() {
    return sentence;
  }

  KeeperRoom room() {
    return room;
  }

  Signature signature() {
    return signature;
  }

  /** The elements that can be measured. */
  List<Element> elements() {
    return room.protocol().elements().stream()
        .filter(e -> !room.protocol().of(e.key()).isEmpty())
        .toList();
  }

  /** Opens an animal; its first measurable element is taken up. */
  public void open(AnimalId id) {
    sentence.set("");
    work.execute(
        () -> {
          Optional<AnimalCard> found = room.register().card(id);
          ui.execute(
              () -> {
                card.set(found);
                choose(first(found));
              });
        });
  }

  private Element first(Optional<AnimalCard> found) {
    return elements().stream()
        .filter(
            e ->
                found.stream()
                    .flatMap(c -> c.animal().bones().stream())
                    .anyMatch(b -> b.element().equals(e.key())))
        .findFirst()
        .orElse(elements().get(0));
  }

  /** Takes up an element. */
  public void choose(Element chosen) {
    element.set(Optional.of(chosen));
    side.set(chosen.symmetry() == Symmetry.AXIAL ? Side.AXIAL : Side.LEFT);
    begin();
  }

  /** Goes to the left or the right bone. */
  public void choose(Side other) {
    side.set(other);
    show();
  }

  /** Reads what the log has of the element's bones. */
  private void begin() {
    measured.clear();
    if (card.get().isEmpty()
        || element.get().isEmpty()
        || signature.whoProperty().get().isBlank()) {
      show();
      return;
    }
    PersonId person = new PersonId(signature.whoProperty().get().strip());
    Element chosen = element.get().get();
    List<Side> sides =
        chosen.symmetry() == Symmetry.AXIAL ? List.of(Side.AXIAL) : List.of(Side.LEFT, Side.RIGHT);
    for (Side one : sides) {
      BoneId bone = bone(card.get().get(), chosen, one);
      measured.put(
          one,
          new Measuring(
              Passes.restore(
                  bone,
                  chosen.key(),
                  Portion.WHOLE,
                  room.protocol(),
                  PassRules.withDefaults(),
                  room.readings().of(bone)),
              room.readings(),
              room.clock(),
              person));
    }
    show();
  }

  /** Under which number the log keeps a shelf bone's readings. */
  private static BoneId bone(AnimalCard card, Element element, Side side) {
    return new BoneId(card.id() + " " + element.key() + " " + side.name().toLowerCase(Locale.ROOT));
  }

  private Optional<Measuring> now() {
    return Optional.ofNullable(measured.get(side.get()));
  }

  /** Takes what the field holds. */
  public void accept() {
    String typed = field.get().strip();
    if (!typed.isEmpty()) {
      run(m -> m.acceptTyped(typed));
    }
  }

  public void undo() {
    run(Measuring::undo);
  }

  public void anotherTake() {
    run(Measuring::anotherTake);
  }

  public void notPossible(NotPossible reason) {
    run(m -> m.notPossible(reason));
  }

  private void run(Function<Measuring, Optional<String>> step) {
    if (now().isEmpty()) {
      sentence.set(room.words().get("skeleton.who"));
      return;
    }
    Optional<String> refused = step.apply(now().get());
    sentence.set(refused.orElse(""));
    if (refused.isEmpty()) {
      field.set("");
      onward();
    }
    show();
  }

  /** A finished left bone gives the field to the right one. */
  private void onward() {
    if (now().filter(m -> m.passes().complete()).isPresent()) {
      Optional<Measuring> right = Optional.ofNullable(measured.get(Side.RIGHT));
      if (side.get() == Side.LEFT && right.filter(m -> !m.passes().complete()).isPresent()) {
        side.set(Side.RIGHT);
      }
    }
  }

  private void show() {
    rows.setAll(
        element.get().stream()
            .flatMap(e -> room.protocol().of(e.key()).stream())
            .filter(m -> m.needs().isEmpty() || m.needs().contains(Portion.WHOLE))
            .map(this::row)
            .toList());
    prompt.set(now().map(this::promptOf).orElse(room.words().get("skeleton.who")));
  }

  private String promptOf(Measuring measuring) {
    Optional<Measurement> due = measuring.passes().currentMeasurement();
    String where = room.words().get("side." + side.get().name().toLowerCase(Locale.ROOT));
    return due.map(
            m ->
                room.words()
                    .get(
                        measuring.passes().boneDown() ? "skeleton.down" : "skeleton.due",
                        where,
                        m.code(),
                        m.name(),
                        measuring.passes().current().map(p -> p.pass()).orElse(1)))
        .orElse(room.words().get("skeleton.complete", where));
  }

  private SkeletonRow row(Measurement m) {
    Side first = measured.containsKey(Side.AXIAL) ? Side.AXIAL : Side.LEFT;
    Optional<Double> left = value(first, m.code());
    Optional<Double> right = value(Side.RIGHT, m.code());
    boolean both = left.isPresent() && right.isPresent() && done(first) && done(Side.RIGHT);
    boolean differ = both && SideTolerance.usual().exceeds(left.get(), right.get());
    String percent =
        both
            ? room.words()
                .get(
                    "skeleton.percent",
                    numbers.fixed(
                        100
                            * Math.abs(left.get() - right.get())
                            / Math.max(left.get(), right.get()),
                        1))
            : "";
    SkeletonRow.Standing standing =
        !both
            ? SkeletonRow.Standing.NOT_COMPARED
            : differ ? SkeletonRow.Standing.DIFFER : SkeletonRow.Standing.AGREE;
    boolean waits =
        now().flatMap(n -> n.passes().current()).filter(p -> p.code().equals(m.code())).isPresent();
    SkeletonRow.Waiting waiting =
        !waits
            ? SkeletonRow.Waiting.NONE
            : side.get() == Side.RIGHT ? SkeletonRow.Waiting.RIGHT : SkeletonRow.Waiting.LEFT;
    return new SkeletonRow(
        m.code(),
        m.name(),
        seen(first, m.code()),
        seen(Side.RIGHT, m.code()),
        percent,
        standing,
        waiting);
  }

  private boolean done(Side one) {
    return Optional.ofNullable(measured.get(one)).filter(m -> m.passes().complete()).isPresent();
  }

  private Optional<Double> value(Side one, MeasurementCode code) {
    return Optional.ofNullable(measured.get(one))
        .flatMap(m -> Optional.ofNullable(m.passes().values().get(code)));
  }

  /** The takes that may be seen; the value once the bone is done. */
  private String seen(Side one, MeasurementCode code) {
    if (done(one)) {
      return value(one, code).map(mm -> numbers.upTo(mm, 2)).orElse(notTaken(one, code));
    }
    return Optional.ofNullable(measured.get(one)).stream()
        .flatMap(m -> m.passes().visible(code).stream())
        .map(this::said)
        .collect(Collectors.joining("  "));
  }

  private String notTaken(Side one, MeasurementCode code) {
    return Optional.ofNullable(measured.get(one)).stream()
        .flatMap(m -> m.passes().counting(code).stream())
        .map(this::said)
        .distinct()
        .collect(Collectors.joining("  "));
  }

  private String said(Reading reading) {
    return reading
        .length()
        .map(length -> numbers.upTo(length.mm(), 2))
        .orElse(room.words().get("skeleton.not.possible"));
  }

  /** Puts the values of the finished bones onto the animal's card. */
  public void store() {
    boolean open = measured.values().stream().anyMatch(m -> begun(m) && !m.passes().complete());
    boolean any = measured.values().stream().anyMatch(this::begun);
    if (open || !any || card.get().isEmpty() || element.get().isEmpty()) {
      sentence.set(room.words().get(open ? "skeleton.open" : "skeleton.nothing"));
      return;
    }
    AnimalCard before = card.get().get();
    Outcome<AnimalCard> after = Outcome.of(before);
    for (Map.Entry<Side, Measuring> one : measured.entrySet()) {
      after = after.then(c -> landed(c, one.getKey(), one.getValue()));
    }
    ChangeNote note =
        new ChangeNote(
            new PersonId(signature.whoProperty().get().strip()),
            "measured on the Shelf, " + element.get().get().key());
    Outcome<AnimalCard> landed = after;
    work.execute(
        () -> {
          Outcome<List<Change>> done = landed.then(c -> room.register().change(before, c, note));
          Optional<AnimalCard> now = room.register().card(before.id());
          ui.execute(
              () -> {
                sentence.set(
                    done.fold(
                        changes -> room.words().get("skeleton.stored", changes.size()),
                        none -> none.reason() + " " + none.remedy()));
                card.set(now);
                afterwards.run();
              });
        });
  }

  private boolean begun(Measuring measuring) {
    return !measuring.passes().values().isEmpty();
  }

  private Outcome<AnimalCard> landed(AnimalCard to, Side one, Measuring measuring) {
    Map<MeasurementCode, Optional<Double>> mm = new TreeMap<>();
    measuring.passes().values().forEach((code, value) -> mm.put(code, Optional.of(value)));
    return mm.isEmpty() || element.get().isEmpty()
        ? Outcome.of(to)
        : new BoneEdit(element.get().get().key(), one, Portion.WHOLE, Optional.empty(), mm)
            .apply(to, room.protocol());
  }
}
