package org.comparanda.measurement;

import java.util.List;

/** Append-only log of readings; a reading is durable when {@code append} returns. */
public interface ReadingLog {
  /** Appends and returns the reading with the id it was given (the id handed in is ignored). */
  default Reading append(Reading reading) {
    return append(List.of(reading)).get(0);
  }

  /** Appends all of them or none, in this order, and returns them with their ids. */
  List<Reading> append(List<Reading> readings);

  /** All rows of a bone in the order they were appended, withdrawn ones included. */
  List<Reading> of(BoneId bone);
}
