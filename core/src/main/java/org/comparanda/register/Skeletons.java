package org.comparanda.register;

import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.AnimalId;

/** Repository of the bones of skeletons that were ever measured on the Shelf. */
public interface Skeletons {
  /** Those of an animal, by number. */
  List<SkeletonBone> of(AnimalId animal);

  /** One bone. */
  Optional<SkeletonBone> bone(BoneId id);

  /** The number that a bone of an animal at a place has, or would be given. Changes nothing. */
  BoneId number(AnimalId animal, BonePlace place);

  /** Keeps what is said of a bone; the Day Book says who said it. */
  SkeletonBone save(SkeletonBone bone, PersonId who);
}
