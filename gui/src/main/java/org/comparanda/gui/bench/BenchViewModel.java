package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.ObservableList;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.GrowingEnd;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.WhichBone;
import org.comparanda.capture.Errand;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.capture.CaliperViewModel;
import org.comparanda.gui.capture.ReadingsViewModel;
import org.comparanda.gui.capture.SketchOf;
import org.comparanda.gui.capture.StateViewModel;
import org.comparanda.gui.capture.StateWords;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.gui.control.falling.FallingPrint;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.gui.photos.PhotosViewModel;
import org.comparanda.gui.text.Words;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.Person;
import org.comparanda.photo.PhotoSubject;
import org.comparanda.reference.BoneInHand;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/**
 * The Bench: one tray, one bone, its state, its readings, what the shelf says, the call. Each of
 * them is a view model of its own; here is what one of them means for the others.
 */
public final class BenchViewModel {
  private final BenchPlace place;
  private final TrayViewModel tray;
  private final SitterViewModel sitter;
  private final BooleanProperty definitionLarge = new SimpleBooleanProperty(false);
  private final AnswerViewModel answer;
  private final Beginning beginning;
  private final ReadingsViewModel readings;
  private final StateViewModel state;
  private final CallViewModel call;
  private final SidesViewModel sides;
  private final PhotosViewModel photos;
  private final CaliperViewModel caliper;
  private final ErrandsViewModel errands;
  private final HintsViewModel hints;

  public BenchViewModel(BenchPlace place) {
    this.place = place;
    tray = new TrayViewModel(place);
    sitter = new SitterViewModel(place);
    answer = new AnswerViewModel(place);
    readings = new ReadingsViewModel(place.reading(), new BenchKeys(this));
    state = new StateViewModel(place.protocol(), this::stored, this::sayState);
    call = new CallViewModel(place, sitter::id);
    sides = new SidesViewModel(place, this);
    photos = new PhotosViewModel(place.books().photos(), place.work(), place.ui(), words("photos"));
    caliper = new CaliperViewModel(place.reading(), words("caliper"));
    errands = new ErrandsViewModel(place, this, sides, caliper);
    readings.caliper(caliper.inHandProperty().get());
    caliper.inHandProperty().addListener((o, was, is) -> readings.caliper(is));
    tray.boneProperty().addListener((o, was, is) -> showPhotos());
    sitter.personProperty().addListener((o, was, is) -> remeasure());
    answer.findingProperty().addListener((o, was, is) -> call.offer(is.map(Finding::suggestion)));
    AnswerKeeping keeping = new AnswerKeeping(place.books().answers());
    call.setCovered(answer.coveredProperty(), answer::standing);
    call.setOnRecorded(
        made -> {
          answer.standing().ifPresent(beside -> keeping.keep(made, beside));
          answer.uncover();
        });
    hints = new HintsViewModel(place.memory(), this);
    beginning = new Beginning(place, this, tray);
    place.work().execute(() -> beginning.readShelf(answer));
  }

  private Words words(String part) {
    return Words.of(part, place.numbers().locale());
  }

  /** Looks at the shelf, the names and the rules of the house again. */
  public void lookAgain() {
    place.work().execute(() -> beginning.readAgain(answer));
  }

  /** Trays to choose from. */
  public ObservableList<Tray> trays() {
    return tray.trays();
  }

  /** What is dangerous about the lot on the bench, until it was read; else empty. */
  public Optional<String> hazards() {
    return tray.hazards();
  }

  /** The hazards of the lot on the bench were read. */
  public void hazardsRead() {
    tray.hazardsRead();
  }

  /** Bones of the tray, in its order. */
  public ObservableList<TrayBone> bones() {
    return tray.bones();
  }

  /** People to choose from. */
  public ObservableList<Person> people() {
    return sitter.people();
  }

  public ObjectProperty<Optional<Tray>> trayProperty() {
    return tray.trayProperty();
  }

  public ObjectProperty<Optional<TrayBone>> boneProperty() {
    return tray.boneProperty();
  }

  /** Who measures and calls. */
  public ObjectProperty<Person> personProperty() {
    return sitter.personProperty();
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

  /** Left and right side by side. */
  SidesViewModel sides() {
    return sides;
  }

  /** Pictures of the bone in hand; none are asked for or shown of one that may be human. */
  public PhotosViewModel photos() {
    return photos;
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

  private void showPhotos() {
    photos.show(
        boneProperty().get().filter(b -> !stopped()).map(b -> PhotoSubject.of(b.id())),
        Optional.of(sitter.id()));
  }

  /** The drawing of the bone in hand, with the jaws at the measurement that waits. */
  public Optional<BoneSketch> sketch() {
    return new Drawings(place, this).sketch();
  }

  /** The falling line with its answer, for print; empty while there is no picture. */
  public Optional<FallingPrint> print(String note) {
    return new Drawings(place, this).print(note);
  }

  /** Makes an empty tray where there is none, and takes it to the bench. */
  public void firstTray() {
    choose(tray.fresh());
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
    tray.bring(next);
    if (tray.bones().isEmpty()) {
      boneProperty().set(Optional.empty());
      answer.wipe();
      readings.close();
      call.close();
    } else {
      choose(tray.bones().get(0));
    }
    errands.show();
  }

  /** Takes a bone in hand; a new one is shown at the end of its tray. */
  public void choose(TrayBone next) {
    tray.take(next);
    definitionLarge.set(false);
    state.show(next.held());
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
    tray.from(by).ifPresent(this::choose);
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
    return boneProperty().get().filter(b -> b.standing() == TrayBone.Standing.STOPPED).isPresent();
  }

  private void measure(TrayBone b) {
    if (b.standing() == TrayBone.Standing.STOPPED) {
      readings.close();
      call.close();
      answer.wipe();
    } else {
      coverIfCallFirst();
      readings.open(sides.passes(b), sitter.id(), answer.ranges(b.element()), sides.beside(b));
      reckon();
    }
  }

  /** By that rule of the house, what the numbers say is shown once somebody called the bone. */
  private void coverIfCallFirst() {
    if (place.books().rules().inForce().callFirst() && !call.called()) {
      answer.cover();
    } else {
      answer.uncover();
    }
  }

  /** Whether what the numbers say is covered until the bone is called. */
  ReadOnlyBooleanProperty coveredProperty() {
    return answer.coveredProperty();
  }

  /** Whether a bone with readings waits for its answer. */
  ReadOnlyBooleanProperty comingProperty() {
    return answer.comingProperty();
  }

  /** Stores what is recorded of the bone; its readings stay, whatever the element. */
  void store(TrayBone changed) {
    tray.store(changed);
    measure(changed);
  }

  private void stored(HeldBone said) {
    boneProperty().get().map(b -> b.withHeld(said)).ifPresent(this::store);
  }

  /** Measures the bone in hand anew, since something about it was recorded elsewhere. */
  void remeasure() {
    boneProperty().get().ifPresent(this::measure);
  }

  /** Reckons anew what is to be said of the bone in hand. */
  void reckon() {
    boneProperty().get().ifPresent(b -> answer.reckon(inHand(b), tray.age(), readings.hidden()));
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
    boneProperty()
        .get()
        .ifPresent(
            b -> {
              List<GrowingEnd> ends =
                  place.protocol().element(b.element()).map(e -> e.growingEnds()).orElse(List.of());
              readings.say(
                  place
                      .words()
                      .get("state.fine.recorded", StateWords.of(b.state(), ends, place.words())));
            });
  }

  /** Takes the recorded state back, as undo takes a reading back. */
  void askStateAnew() {
    boneProperty()
        .get()
        .ifPresent(
            b -> {
              store(b.withState(BoneState.notRecorded()));
              boneProperty().get().map(TrayBone::held).ifPresent(state::show);
              state.ask();
            });
  }

  /** Sets the bone in hand aside as possibly human. */
  void setAside() {
    boneProperty()
        .get()
        .ifPresent(
            b -> {
              place.books().stops().setAside(b.id(), sitter.id(), place.clock().instant(), "");
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
}
