package org.comparanda.photo;

import org.comparanda.measurement.BoneId;
import org.comparanda.reference.AnimalId;

/** What a picture shows. */
public sealed interface PhotoSubject {
  /** A bone of a tray. */
  record OfBone(BoneId bone) implements PhotoSubject {}

  /** An animal of the shelf. */
  record OfAnimal(AnimalId animal) implements PhotoSubject {}

  static PhotoSubject of(BoneId bone) {
    return new OfBone(bone);
  }

  static PhotoSubject of(AnimalId animal) {
    return new OfAnimal(animal);
  }
}
