package org.comparanda.secondlook;

import org.comparanda.measurement.BoneId;

/** A bone that waits for a second person, and why. */
public record Queued(BoneId bone, Why why) {
  /** Why a bone is looked at again. */
  public enum Why {
    /** Drawn by the rule alone: only these tell how well people agree. */
    EVERY_NTH,
    CALL_AGAINST_SUGGESTION,
    FIRST_OF_ITS_KIND,
    LOW_TYPICALITY;

    /** Whether the bone was picked for what it is, so that it says nothing on the whole lot. */
    public boolean targeted() {
      return this != EVERY_NTH;
    }
  }
}
