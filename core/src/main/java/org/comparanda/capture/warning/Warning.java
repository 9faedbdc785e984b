package org.comparanda.capture.warning;

import java.util.Optional;
import org.comparanda.measurement.Length;

/**
 * Something odd about the value in the field; never a reason to refuse it.
 *
 * @param sentence what is odd
 * @param proposal what the person may have meant; one key accepts it
 */
public record Warning(String sentence, Optional<Length> proposal) {
  static Warning of(String sentence) {
    return new Warning(sentence, Optional.empty());
  }
}
