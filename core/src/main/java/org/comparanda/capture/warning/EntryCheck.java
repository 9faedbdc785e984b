package org.comparanda.capture.warning;

import java.util.Optional;

/** One question about the value in the field. Changes nothing and never throws. */
public interface EntryCheck {
  Optional<Warning> check(Entry entry);
}
