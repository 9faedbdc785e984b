package org.comparanda.bone;

import java.util.Set;

/** State of one bone, recorded before it is measured. The flags are copied. */
public record BoneState(Fusion proximal, Fusion distal, Set<Flag> flags) {
  public BoneState {
    flags = Set.copyOf(flags);
  }

  /** A bone of which nobody recorded anything. */
  public static BoneState notRecorded() {
    return new BoneState(Fusion.CANT_SEE, Fusion.CANT_SEE, Set.of());
  }

  /** The same bone with other flags. */
  public BoneState withFlags(Set<Flag> other) {
    return new BoneState(proximal, distal, other);
  }

  /** Whether an end is unfused or a flag says unfused or juvenile. */
  public boolean young() {
    return proximal == Fusion.UNFUSED
        || distal == Fusion.UNFUSED
        || flags.stream().anyMatch(Flag::young);
  }

  /** Whether a flag keeps the bone out of every fit. */
  public boolean keptOutOfFits() {
    return young() || flags.stream().anyMatch(Flag::keepsOutOfFits);
  }
}
