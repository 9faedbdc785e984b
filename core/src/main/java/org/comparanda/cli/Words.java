package org.comparanda.cli;

import java.util.Locale;

/** Our enums as people read them. */
final class Words {
  private Words() {}

  static String of(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
