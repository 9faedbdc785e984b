package org.comparanda.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.comparanda.suggestion.Method;

/** Methods as they are typed: small letters and hyphens. */
final class MethodWord {
  private MethodWord() {}

  static String of(Method method) {
    return method.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The method of a word; none for a word that is no method. */
  static Optional<Method> read(String word) {
    return Stream.of(Method.values())
        .filter(m -> of(m).equals(word.toLowerCase(Locale.ROOT)))
        .findFirst();
  }
}
