package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.comparanda.bone.BoneAge;
import org.comparanda.capture.warning.ShelfRanges;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.BoneInHand;

/**
 * What the shelf says of the readings so far. What is reckoned is reckoned by {@code work}; the
 * last finding stays until the next is there, and one that has been overtaken is dropped.
 */
final class AnswerViewModel {
  private final BenchPlace place;
  private final ObjectProperty<Optional<Finding>> finding =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Afterwards> afterwards =
      new SimpleObjectProperty<>(Afterwards.nothingYet());
  private final ObjectProperty<FallingPicture> picture =
      new SimpleObjectProperty<>(FallingPicture.empty());
  private Optional<Advice> advice = Optional.empty();
  private ShelfDots dots;
  private final AtomicLong asked = new AtomicLong();
  private final BooleanProperty covered = new SimpleBooleanProperty();
  private final BooleanProperty coming = new SimpleBooleanProperty();
  private Optional<Finding> standing = Optional.empty();
  private Runnable show = () -> {};

  AnswerViewModel(BenchPlace place) {
    this.place = place;
    this.dots = new ShelfDots(List.of(), place.words(), place.numbers());
  }

  ObjectProperty<Optional<Finding>> findingProperty() {
    return finding;
  }

  /** What is reckoned when the answer already stands. */
  ObjectProperty<Afterwards> afterwardsProperty() {
    return afterwards;
  }

  ObjectProperty<FallingPicture> pictureProperty() {
    return picture;
  }

  /** The shelf was read; says whether it gives other advice than before. */
  boolean ready(Advice read) {
    boolean other = advice.filter(read::sameAs).isEmpty();
    if (other) {
      advice = Optional.of(read);
    }
    return other;
  }

  /** What the shelf shows for an element; nothing before it was read. */
  ShelfRanges ranges(org.comparanda.bone.ElementKey element) {
    return advice
        .map(a -> ShelfRanges.of(a.shelf(), element))
        .orElse(new ShelfRanges(java.util.Map.of()));
  }

  /** Whether what is said stays covered until the bone is called, by the rules of the house. */
  ReadOnlyBooleanProperty coveredProperty() {
    return covered;
  }

  /** Whether a bone with readings waits for what is said of it. */
  ReadOnlyBooleanProperty comingProperty() {
    return coming;
  }

  /** Covers what is said, now and later. */
  void cover() {
    covered.set(true);
  }

  /** Shows what is said. */
  void uncover() {
    if (covered.get()) {
      covered.set(false);
      show.run();
    }
  }

  /** What is said, shown or covered. */
  Optional<Finding> standing() {
    return standing;
  }

  /** Nothing is said any more, nor will be of what is being reckoned. */
  void wipe() {
    asked.incrementAndGet();
    drop();
    afterwards.set(Afterwards.nothingYet());
    finding.set(Optional.empty());
    picture.set(FallingPicture.empty());
  }

  /** Another bone lies there: what was said was not of it. */
  void forget() {
    drop();
    finding.set(Optional.empty());
  }

  private void drop() {
    standing = Optional.empty();
    show = () -> {};
    coming.set(false);
  }

  /**
   * Reckons what is to be said of a bone.
   *
   * @param hidden measurements whose earlier take must not be seen
   */
  void reckon(BoneInHand bone, BoneAge age, Set<MeasurementCode> hidden) {
    long turn = asked.incrementAndGet();
    coming.set(!bone.values().isEmpty());
    advice.ifPresent(
        a ->
            place
                .work()
                .execute(
                    () -> {
                      Finding found = a.of(bone, age);
                      place.ui().execute(() -> arrived(turn, found, a, age, hidden));
                    }));
  }

  private void arrived(
      long turn, Finding found, Advice a, BoneAge age, Set<MeasurementCode> hidden) {
    if (turn != asked.get()) {
      return;
    }
    dots = dots.of(found.points());
    PictureOf pictures = new PictureOf(a.taxa(), dots, place.words(), place.numbers());
    boolean nothingTaken = found.bone().values().isEmpty();
    afterwards.set(Afterwards.nothingYet());
    standing = nothingTaken ? Optional.empty() : Optional.of(found);
    show =
        () -> {
          finding.set(standing);
          picture.set(
              nothingTaken ? pictures.before(codes(found.bone())) : pictures.of(found, hidden));
          goOn(turn, found, a, age);
        };
    if (covered.get()) {
      finding.set(Optional.empty());
      picture.set(pictures.before(codes(found.bone())));
    } else {
      show.run();
    }
    coming.set(false);
  }

  private void goOn(long turn, Finding found, Advice a, BoneAge age) {
    place
        .idle()
        .execute(
            () ->
                a.afterwards(
                    found,
                    age,
                    () -> turn != asked.get(),
                    more -> place.ui().execute(() -> came(turn, more))));
  }

  private void came(long turn, Afterwards more) {
    if (turn == asked.get()) {
      afterwards.set(more);
    }
  }

  private List<MeasurementCode> codes(BoneInHand b) {
    return place.protocol().of(b.element()).stream()
        .filter(m -> m.needs().isEmpty() || m.needs().contains(b.portion()))
        .map(Measurement::code)
        .toList();
  }
}
