package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.capture.Draft;
import org.comparanda.capture.NamedKey;
import org.comparanda.capture.warning.ShelfRanges;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.gui.control.falling.FallingPrint;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/**
 * The Bench: one tray, one bone, its state, its readings, what the shelf says, the call.
 *
 * <p>What is reckoned is reckoned by {@code work}; the last finding stays until the next is there,
 * and one that has been overtaken is dropped.
 */
public final class BenchViewModel {
  private final BenchPlace place;
  private final ObservableList<Tray> trays = FXCollections.observableArrayList();
  private final ObservableList<TrayBone> bones = FXCollections.observableArrayList();
  private final ObservableList<Person> people = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Tray>> tray = new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<TrayBone>> bone =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Person> person;
  private final ObjectProperty<Optional<Finding>> finding =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<FallingPicture> picture =
      new SimpleObjectProperty<>(FallingPicture.empty());
  private final BooleanProperty definitionLarge = new SimpleBooleanProperty(false);
  private final ReadingsViewModel readings;
  private final StateViewModel state;
  private final CallViewModel call;
  private Optional<Advice> advice = Optional.empty();
  private long asked;

  public BenchViewModel(BenchPlace place) {
    this.place = place;
    people.setAll(place.people().all());
    person =
        new SimpleObjectProperty<>(
            people.isEmpty() ? new Person(new PersonId("bench"), "") : people.get(0));
    readings = new ReadingsViewModel(place, new Beyond());
    state = new StateViewModel(place.protocol(), this::store);
    call = new CallViewModel(place, () -> person.get().id());
    person.addListener((o, was, is) -> bone.get().ifPresent(this::measure));
    trays.setAll(place.trays().all());
    place.work().execute(this::readShelf);
  }

  /** Trays to choose from. */
  public ObservableList<Tray> trays() {
    return trays;
  }

  /** Bones of the tray, in its order. */
  public ObservableList<TrayBone> bones() {
    return bones;
  }

  /** People to choose from. */
  public ObservableList<Person> people() {
    return people;
  }

  public ObjectProperty<Optional<Tray>> trayProperty() {
    return tray;
  }

  public ObjectProperty<Optional<TrayBone>> boneProperty() {
    return bone;
  }

  /** Who measures and calls. */
  public ObjectProperty<Person> personProperty() {
    return person;
  }

  /** What the shelf says of the readings so far; empty before the first. */
  public ObjectProperty<Optional<Finding>> findingProperty() {
    return finding;
  }

  /** The falling line. */
  public ObjectProperty<FallingPicture> pictureProperty() {
    return picture;
  }

  /** Whether the definition is shown large. */
  public BooleanProperty definitionLargeProperty() {
    return definitionLarge;
  }

  public ReadingsViewModel readings() {
    return readings;
  }

  public StateViewModel state() {
    return state;
  }

  public CallViewModel call() {
    return call;
  }

  /** The drawing of the bone in hand, with the jaws at the measurement that waits. */
  public Optional<BoneSketch> sketch() {
    Optional<Measurement> taken = readings.currentProperty().get();
    String text = readings.fieldProperty().get().text();
    String label =
        text.isBlank() ? taken.map(m -> m.code().value()).orElse("") : text.strip() + " mm";
    return bone.get()
        .flatMap(b -> new SketchOf(place.outlines()).of(b.element(), b.portion(), taken, label));
  }

  /** The falling line with its answer, for print; empty while there is no picture. */
  public Optional<FallingPrint> print(String note) {
    return finding
        .get()
        .filter(f -> !picture.get().rows().isEmpty())
        .map(f -> PictureOf.print(f, picture.get(), note));
  }

  /** Takes a tray to the bench and its first bone in hand. */
  public void choose(Tray next) {
    tray.set(Optional.of(next));
    bones.setAll(place.trays().bonesOf(next.id()));
    if (bones.isEmpty()) {
      clear();
    } else {
      choose(bones.get(0));
    }
  }

  /** Takes a bone in hand. */
  public void choose(TrayBone next) {
    bone.set(Optional.of(next));
    definitionLarge.set(false);
    state.show(next);
    call.open(next.id());
    finding.set(Optional.empty());
    measure(next);
    askForState(next);
  }

  /** The state comes before the first reading, unless it was recorded with the bone. */
  private void askForState(TrayBone b) {
    boolean unknown = b.state().equals(BoneState.notRecorded());
    if (unknown && b.standing() == TrayBone.Standing.OPEN && readings.untouched()) {
      state.ask();
    } else {
      state.leave();
    }
  }

  /** The bone after this one in the tray, or before it. */
  public void step(int by) {
    int here = bone.get().map(bones::indexOf).orElse(-1);
    if (here >= 0 && here + by >= 0 && here + by < bones.size()) {
      choose(bones.get(here + by));
    }
  }

  /** Asks whether this could be human; the key and the button do the same. */
  public void askStop() {
    readings.pressed(NamedKey.STOP);
  }

  /** Whether the bone in hand was set aside as possibly human. */
  public boolean stopped() {
    return bone.get().filter(b -> b.standing() == TrayBone.Standing.STOPPED).isPresent();
  }

  private void clear() {
    bone.set(Optional.empty());
    finding.set(Optional.empty());
    picture.set(FallingPicture.empty());
    readings.close();
    call.close();
  }

  private void measure(TrayBone b) {
    if (b.standing() == TrayBone.Standing.STOPPED) {
      readings.close();
      call.close();
      asked++;
      finding.set(Optional.empty());
      picture.set(FallingPicture.empty());
    } else {
      ShelfRanges ranges =
          advice
              .map(a -> ShelfRanges.of(a.shelf(), b.element()))
              .orElse(new ShelfRanges(java.util.Map.of()));
      readings.open(b, person.get().id(), ranges);
      reckon();
    }
  }

  /** Stores what is recorded of the bone; its readings stay, whatever the element. */
  private void store(TrayBone changed) {
    place.trays().save(changed);
    bones.replaceAll(b -> b.id().equals(changed.id()) ? changed : b);
    bone.set(Optional.of(changed));
    measure(changed);
  }

  private void readShelf() {
    Advice read = new Advice(place.animals().shelf(), place.protocol(), place.tree());
    place
        .ui()
        .execute(
            () -> {
              advice = Optional.of(read);
              bone.get().ifPresentOrElse(this::measure, this::resume);
            });
  }

  /** Takes up again what lay open when the program ended. */
  private void resume() {
    place.drafts().of(ReadingsViewModel.BENCH).ifPresent(this::resume);
  }

  private void resume(Draft left) {
    Optional<TrayBone> open =
        place.trays().bone(left.bone()).filter(b -> b.standing() == TrayBone.Standing.OPEN);
    open.ifPresent(
        b ->
            trays.stream()
                .filter(t -> t.id().equals(b.tray()))
                .findFirst()
                .ifPresent(
                    t -> {
                      tray.set(Optional.of(t));
                      bones.setAll(place.trays().bonesOf(t.id()));
                      choose(b);
                      readings.resume(left);
                    }));
  }

  private void reckon() {
    long turn = ++asked;
    bone.get().ifPresent(b -> advice.ifPresent(a -> reckon(turn, b, a)));
  }

  private void reckon(long turn, TrayBone b, Advice a) {
    BoneInHand inHand =
        new BoneInHand(
            b.id().value(),
            b.animal(),
            b.element(),
            b.side(),
            b.portion(),
            b.state(),
            readings.values());
    BoneAge age = tray.get().map(Tray::age).orElse(BoneAge.NOT_KNOWN);
    place
        .work()
        .execute(
            () -> {
              Finding found = a.of(inHand, age);
              place.ui().execute(() -> arrived(turn, found, a));
            });
  }

  private void arrived(long turn, Finding found, Advice a) {
    if (turn != asked) {
      return;
    }
    PictureOf pictures = new PictureOf(a.shelf().taxa(), place.words(), place.numbers());
    boolean nothingTaken = found.bone().values().isEmpty();
    finding.set(nothingTaken ? Optional.empty() : Optional.of(found));
    call.offer(finding.get().map(Finding::suggestion));
    picture.set(
        nothingTaken
            ? pictures.before(codes(found.bone()), found.points())
            : pictures.of(found, readings.hidden()));
  }

  private List<org.comparanda.measurement.MeasurementCode> codes(BoneInHand b) {
    return place.protocol().of(b.element()).stream()
        .filter(m -> m.needs().isEmpty() || m.needs().contains(b.portion()))
        .map(Measurement::code)
        .toList();
  }

  private void setAside() {
    bone.get()
        .ifPresent(
            b ->
                store(
                    new TrayBone(
                        b.id(),
                        b.tray(),
                        b.animal(),
                        b.element(),
                        b.side(),
                        b.portion(),
                        b.state(),
                        TrayBone.Standing.STOPPED,
                        b.remarks())));
  }

  /** What keys ask for beyond readings. */
  private final class Beyond implements ReadingsViewModel.Beyond {
    @Override
    public void changed() {
      reckon();
    }

    @Override
    public void recordCall() {
      call.record();
    }

    @Override
    public void showDefinition() {
      definitionLarge.set(!definitionLarge.get());
    }

    @Override
    public void stop() {
      setAside();
    }
  }
}
