package org.comparanda.capture;

import java.util.Optional;

/** Keeps what lies open on each bench, so that it comes back after a crash. One draft a bench. */
public interface Drafts {
  void save(String bench, Draft draft);

  Optional<Draft> of(String bench);

  void clear(String bench);
}
