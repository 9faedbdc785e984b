package org.comparanda.gui.bench;

import java.util.Optional;
import org.comparanda.suggestion.SecondOpinions;
import org.comparanda.suggestion.Trial;

/**
 * What is reckoned when an answer already stands.
 *
 * @param trial what the shelf says of its own animals on this very set
 * @param opinions how all methods do on this element
 */
record Afterwards(Optional<Trial> trial, Optional<SecondOpinions> opinions) {
  static Afterwards nothingYet() {
    return new Afterwards(Optional.empty(), Optional.empty());
  }
}
