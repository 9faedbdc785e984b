package org.comparanda.storage;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.bone.Flag;

/** Flags as one text: their words in alphabetical order, joined by a bar. */
final class Flags {
  private Flags() {}

  static String text(Set<Flag> flags) {
    return flags.stream().map(Flag::name).sorted().collect(Collectors.joining("|"));
  }

  static Set<Flag> of(String text) {
    return Arrays.stream(text.split("\\|"))
        .filter(word -> !word.isEmpty())
        .map(Flag::valueOf)
        .collect(Collectors.toUnmodifiableSet());
  }
}
