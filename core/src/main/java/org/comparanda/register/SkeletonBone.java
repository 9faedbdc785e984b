package org.comparanda.register;

import java.util.EnumSet;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.HeldBone;
import org.comparanda.measurement.BoneId;
import org.comparanda.reference.AnimalId;

/**
 * A bone of a skeleton that is measured on the Shelf.
 *
 * @param id under which the log keeps its readings; it stays when the bone is moved
 * @param animal whose bone it is
 * @param held what is said of it
 */
public record SkeletonBone(BoneId id, AnimalId animal, HeldBone held) {
  public SkeletonBone withHeld(HeldBone other) {
    return new SkeletonBone(id, animal, other);
  }

  /** The same bone as one of another number of its animal. */
  SkeletonBone of(AnimalId other) {
    return new SkeletonBone(id, other, held);
  }

  /** Where it stands in its skeleton. */
  public BonePlace place() {
    return new BonePlace(held.element(), held.side(), held.portion());
  }

  /** The same bone somewhere else in its skeleton. */
  public SkeletonBone at(BonePlace place) {
    return withHeld(new HeldBone(place.element(), place.side(), place.portion(), held.state()));
  }

  /** The flags that its card gets: those set, and unfused where an end is. */
  public Set<Flag> cardFlags() {
    BoneState state = held.state();
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    flags.addAll(state.flags());
    if (state.proximal() == Fusion.UNFUSED || state.distal() == Fusion.UNFUSED) {
      flags.add(Flag.UNFUSED);
    }
    return flags;
  }
}
