package org.comparanda.gui.shelf.skeleton;

import java.util.Optional;
import org.comparanda.capture.Draft;
import org.comparanda.gui.capture.ReadingsViewModel;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.SkeletonBone;

/** What lies open on the Shelf and is not accepted yet. */
record Unfinished(SkeletonRoom room) {
  private Optional<Draft> draft() {
    return room.reading().drafts().of(room.reading().name());
  }

  /** The bone whose measuring was left in the middle. */
  Optional<SkeletonBone> bone() {
    return draft().flatMap(d -> room.skeletons().bone(d.bone()));
  }

  /** What was left of an animal. */
  Optional<Draft> of(AnimalId animal) {
    return draft().filter(d -> bone().filter(b -> b.animal().equals(animal)).isPresent());
  }

  /** What is typed now. */
  static Optional<Draft> typed(ReadingsViewModel readings) {
    String text = readings.fieldProperty().get().text();
    return readings
        .passes()
        .flatMap(p -> p.current().map(at -> new Draft(p.bone(), p.element(), at, text)));
  }
}
