package org.comparanda.bone;

import java.util.EnumSet;
import java.util.Set;

/**
 * What happened to a bone. Most flags keep it out of fits; the last three are for the record only.
 */
public enum Flag {
  CAST,
  RECONSTRUCTED,
  CRUSHED,
  PATHOLOGICAL,
  JUVENILE,
  BURNT,
  UNFUSED,
  ROLLED,
  GNAWED,
  CUT;

  private static final Set<Flag> RECORD_ONLY = EnumSet.of(ROLLED, GNAWED, CUT);
  private static final Set<Flag> YOUNG = EnumSet.of(JUVENILE, UNFUSED);

  /** Whether a bone with this flag is measured and stored but never feeds or enters a fit. */
  public boolean keepsOutOfFits() {
    return !RECORD_ONLY.contains(this);
  }

  /** Whether this flag says that the animal was still growing. */
  public boolean young() {
    return YOUNG.contains(this);
  }
}
