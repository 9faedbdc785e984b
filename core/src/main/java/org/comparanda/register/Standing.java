package org.comparanda.register;

import java.util.Optional;
import org.comparanda.reference.AnimalId;

/** Whether an animal stands on the shelf. Those that don't are in no fit and are still found. */
public sealed interface Standing {
  /** It stands on the shelf. */
  record Kept() implements Standing {}

  /** It was taken off the shelf; its record stays. */
  record Retired() implements Standing {}

  /** Its number was a second one of another animal, which has its bones now. */
  record MergedInto(AnimalId animal) implements Standing {}

  /**
   * A bone of it may be human: nothing of it is measured or compared until a person with that right
   * opens the bone again; then it stands as before.
   */
  record SetAside(Standing before) implements Standing {}

  public static Standing kept() {
    return new Kept();
  }

  /** Whether it stands on the shelf. */
  default boolean onTheShelf() {
    return this instanceof Kept;
  }

  /** The animal that it turned out to be. */
  default Optional<AnimalId> mergedInto() {
    return this instanceof MergedInto m
        ? Optional.of(m.animal())
        : this instanceof SetAside s ? s.before().mergedInto() : Optional.empty();
  }

  /** Whether a bone of it may be human. */
  default boolean setAside() {
    return this instanceof SetAside;
  }
}
