package org.comparanda.measurement;

import java.util.List;

/** Append-only log of readings; a reading is durable when {@code append} returns. */
public interface ReadingLog {
  /** Appends and returns the reading with the id it was given (the id handed in is ignored). */
  Reading append(Reading reading);

  /** All rows of a bone in the order they were appended, withdrawn ones included. */
  List<Reading> of(BoneId bone);
}
