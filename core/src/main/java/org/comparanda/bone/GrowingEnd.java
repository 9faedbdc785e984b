package org.comparanda.bone;

/**
 * An end of an element that grows by a plate of its own, whose fusion is recorded. The state of a
 * bone keeps two of them: the upper or front end as its proximal one, the lower or rear end as its
 * distal one.
 */
public enum GrowingEnd {
  PROXIMAL,
  DISTAL,
  CRANIAL,
  CAUDAL;

  private boolean upper() {
    return this == PROXIMAL || this == CRANIAL;
  }

  /** Whether this end is there when so much of the bone is in hand. */
  public boolean in(Portion portion) {
    return portion == Portion.WHOLE || portion == (upper() ? Portion.PROXIMAL : Portion.DISTAL);
  }

  /** What a state says of this end. */
  public Fusion of(BoneState state) {
    return upper() ? state.proximal() : state.distal();
  }

  /** The same state with this end so. */
  public BoneState with(BoneState state, Fusion fusion) {
    return upper()
        ? new BoneState(fusion, state.distal(), state.flags())
        : new BoneState(state.proximal(), fusion, state.flags());
  }
}
