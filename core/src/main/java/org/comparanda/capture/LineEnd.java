package org.comparanda.capture;

import java.util.Arrays;
import java.util.Comparator;

/** What a caliper sends after each value. */
public enum LineEnd {
  NONE(""),
  CR("\r"),
  LF("\n"),
  CRLF("\r\n"),
  TAB("\t");

  private final String characters;

  LineEnd(String characters) {
    this.characters = characters;
  }

  public String characters() {
    return characters;
  }

  /** The longest of these with which the text ends. */
  public static LineEnd of(String text) {
    return Arrays.stream(values())
        .filter(end -> text.endsWith(end.characters))
        .max(Comparator.comparingInt(end -> end.characters.length()))
        .orElse(NONE);
  }
}
