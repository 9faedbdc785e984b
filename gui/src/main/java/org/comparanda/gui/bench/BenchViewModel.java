package org.comparanda.gui.bench;

import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.WhichBone;
import org.comparanda.capture.Draft;
import org.comparanda.capture.Errand;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.gui.control.falling.FallingPrint;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.gui.photos.PhotosViewModel;
import org.comparanda.gui.text.Words;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.photo.PhotoSubject;
import org.comparanda.reference.BoneInHand;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;

/** The Bench: one tray, one bone, its state, its readings, what the shelf says, the call. */
public final class BenchViewModel {
  private static final String PERSON = "person";

  private final BenchPlace place;
  private final ObservableList<Tray> trays = FXCollections.observableArrayList();
  private final ObservableList<TrayBone> bones = FXCollections.observableArrayList();
  private final ObservableList<Person> people = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Tray>> tray = new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<TrayBone>> bone =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Person> person;
  private final BooleanProperty definitionLarge = new SimpleBooleanProperty(false);
  private final AnswerViewModel answer;
  private final ReadingsViewModel readings;
  private final StateViewModel state;
  private final CallViewModel call;
  private final ErrandsViewModel errands;
  private final SidesViewModel sides;
  private final CaliperViewModel caliper;
  private final HintsViewModel hints;
  private final PhotosViewModel photos;

  public BenchViewModel(BenchPlace place) {
    this.place = place;
    people.setAll(place.people().all());
    person =
        new SimpleObjectProperty<>(
            remembered()
                .orElseGet(
                    () ->
                        people.isEmpty() ? new Person(new PersonId("bench"), "") : people.get(0)));
    answer = new AnswerViewModel(place);
    readings = new ReadingsViewModel(place, new Beyond());
    state = new StateViewModel(place.protocol(), this::store, this::sayState);
    call = new CallViewModel(place, () -> person.get().id());
    sides = new SidesViewModel(place, this);
    photos =
        new PhotosViewModel(
            place.books().photos(),
            place.work(),
            place.ui(),
            Words.of("photos", place.numbers().locale()));
    bone.addListener((o, was, is) -> showPhotos());
    caliper = new CaliperViewModel(place, Words.of("caliper", place.numbers().locale()));
    readings.caliper(caliper.inHandProperty().get());
    caliper.inHandProperty().addListener((o, was, is) -> readings.caliper(is));
    errands = new ErrandsViewModel(place, this, sides, caliper);
    person.addListener(
        (o, was, is) -> {
          place.memory().remember(PERSON, is.id().value());
          bone.get().ifPresent(this::measure);
        });
    answer.findingProperty().addListener((o, was, is) -> call.offer(is.map(Finding::suggestion)));
    AnswerKeeping keeping = new AnswerKeeping(place.books().answers());
    call.setOnRecorded(
        made -> answer.findingProperty().get().ifPresent(seen -> keeping.keep(made, seen)));
    trays.setAll(place.trays().all());
    hints = new HintsViewModel(place.memory(), this);
    place.work().execute(this::readShelf);
  }

  /** Who sat here last. */
  private Optional<Person> remembered() {
    return place
        .memory()
        .recall(PERSON)
        .flatMap(id -> people.stream().filter(p -> p.id().value().equals(id)).findFirst());
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
    return answer.findingProperty();
  }

  /** What is reckoned when the answer already stands. */
  ObjectProperty<Afterwards> afterwardsProperty() {
    return answer.afterwardsProperty();
  }

  /** The falling line. */
  public ObjectProperty<FallingPicture> pictureProperty() {
    return answer.pictureProperty();
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

  /** Pictures of the bone in hand; none are asked for or shown of one that may be human. */
  public PhotosViewModel photos() {
    return photos;
  }

  private void showPhotos() {
    photos.show(
        bone.get().filter(b -> !stopped()).map(b -> PhotoSubject.of(b.id())),
        Optional.of(person.get().id()));
  }

  /** Hints for the first time. */
  public HintsViewModel hints() {
    return hints;
  }

  /** The caliper in hand. */
  public CaliperViewModel caliper() {
    return caliper;
  }

  /** What can be asked of the bench beside readings. */
  public ErrandsViewModel errands() {
    return errands;
  }

  /** The drawing of the bone in hand, with the jaws at the measurement that waits. */
  public Optional<BoneSketch> sketch() {
    Optional<Measurement> taken = readings.currentProperty().get();
    String text = readings.fieldProperty().get().text();
    String label =
        text.isBlank() ? taken.map(m -> m.code().value()).orElse("") : text.strip() + " mm";
    return bone.get()
        .map(
            b ->
                new SketchOf(place.outlines())
                    .of(b.element(), b.portion(), taken, label)
                    .orElseGet(() -> SketchOf.notDrawn(place.words().get("outline.none"))));
  }

  /** The falling line with its answer, for print; empty while there is no picture. */
  public Optional<FallingPrint> print(String note) {
    FallingPicture picture = answer.pictureProperty().get();
    return answer
        .findingProperty()
        .get()
        .filter(f -> !picture.rows().isEmpty())
        .map(f -> PictureOf.print(f, picture, note));
  }

  /** Makes an empty tray where there is none, and takes it to the bench. */
  public void firstTray() {
    int number = trays.size() + 1;
    Tray made =
        new Tray(
            new TrayId("tray-" + number),
            place.words().get("tray.fresh.lot"),
            place.words().get("tray.fresh", number),
            BoneAge.NOT_KNOWN,
            "",
            "",
            Tray.State.ON_THE_BENCH);
    place.trays().save(made);
    trays.setAll(place.trays().all());
    choose(made);
  }

  /** The key "Which bone is it?"; an element that it finds is that of the bone in hand. */
  WhichBoneViewModel whichBone(WhichBone key, Runnable afterwards) {
    return new WhichBoneViewModel(
        key,
        element -> {
          place
              .protocol()
              .element(element)
              .map(Optional::of)
              .ifPresent(state.elementProperty()::set);
          afterwards.run();
        });
  }

  /** Drawings of the elements. */
  SketchOf sketches() {
    return new SketchOf(place.outlines());
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
    errands.show();
  }

  /** Takes a bone in hand; a new one is shown at the end of its tray. */
  public void choose(TrayBone next) {
    if (bones.stream().noneMatch(b -> b.id().equals(next.id()))) {
      bones.add(next);
    }
    bone.set(Optional.of(next));
    definitionLarge.set(false);
    state.show(next);
    call.open(next.id());
    answer.forget();
    measure(next);
    askForState(next);
    errands.show();
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

  /** Does something that is no reading, or asks what it needs to know for it. */
  public void run(Errand errand) {
    if (errand == Errand.DEFINITION) {
      definitionLarge.set(!definitionLarge.get());
    } else {
      errands.run(errand);
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
    answer.wipe();
    readings.close();
    call.close();
  }

  private void measure(TrayBone b) {
    if (b.standing() == TrayBone.Standing.STOPPED) {
      readings.close();
      call.close();
      answer.wipe();
    } else {
      readings.open(b, sides.passes(b), person.get().id(), answer.ranges(b.element()));
      reckon();
    }
  }

  /** Stores what is recorded of the bone; its readings stay, whatever the element. */
  void store(TrayBone changed) {
    place.trays().save(changed);
    bones.replaceAll(b -> b.id().equals(changed.id()) ? changed : b);
    bone.set(Optional.of(changed));
    measure(changed);
  }

  /** Measures the bone in hand anew, since something about it was recorded elsewhere. */
  void remeasure() {
    bone.get().ifPresent(this::measure);
  }

  private void readShelf() {
    Advice read =
        new Advice(
            place.animals().shelf(), place.protocol(), place.tree(), place.numbers().locale());
    place
        .ui()
        .execute(
            () -> {
              answer.ready(read);
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
    BoneAge age = tray.get().map(Tray::age).orElse(BoneAge.NOT_KNOWN);
    bone.get().ifPresent(b -> answer.reckon(inHand(b), age, readings.hidden()));
  }

  private BoneInHand inHand(TrayBone b) {
    return new BoneInHand(
        b.id().value(),
        b.animal(),
        b.element(),
        b.side(),
        b.portion(),
        b.state(),
        readings.values());
  }

  /** What one key recorded, in words, so that nothing is recorded unseen. */
  private void sayState() {
    bone.get()
        .ifPresent(
            b -> {
              String said =
                  StateWords.of(
                      b.state(),
                      place
                          .protocol()
                          .element(b.element())
                          .map(e -> e.growingEnds())
                          .orElse(java.util.List.of()),
                      place.words());
              readings.say(place.words().get("state.fine.recorded", said));
            });
  }

  private void setAside() {
    bone.get()
        .ifPresent(
            b -> {
              place
                  .books()
                  .stops()
                  .setAside(b.id(), person.get().id(), place.clock().instant(), "");
              store(b.withStanding(TrayBone.Standing.STOPPED));
            });
  }

  /** Whom the house calls when a bone may be human; what to do first while it says nobody. */
  String contactCard() {
    boolean set =
        place.books().rules().all().stream().anyMatch(r -> r.name() == RuleName.CONTACT_CARD);
    return set
        ? place.books().rules().now(RuleName.CONTACT_CARD)
        : place.words().get("stop.contact");
  }

  /** Takes the recorded state back, as undo takes a reading back. */
  private void askStateAnew() {
    bone.get()
        .ifPresent(
            b -> {
              store(b.withState(BoneState.notRecorded()));
              bone.get().ifPresent(state::show);
              state.ask();
            });
  }

  /** What keys ask for beyond readings. */
  private final class Beyond implements ReadingsViewModel.Beyond {
    @Override
    public void changed() {
      reckon();
    }

    @Override
    public void recorded() {
      sides.next();
    }

    @Override
    public boolean undoneElsewhere() {
      sides.beforeUndo();
      boolean nothingRead = readings.untouched();
      if (nothingRead) {
        askStateAnew();
      }
      return nothingRead;
    }

    @Override
    public void recordCall() {
      call.record();
    }

    @Override
    public void run(Errand errand) {
      BenchViewModel.this.run(errand);
    }

    @Override
    public void listErrands() {
      errands.list();
    }

    @Override
    public void answer(String text) {
      errands.answer(text);
    }

    @Override
    public void stop() {
      setAside();
    }
  }
}
