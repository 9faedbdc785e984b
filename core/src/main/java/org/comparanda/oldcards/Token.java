package org.comparanda.oldcards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A word, a number or a sign of a card.
 *
 * @param from place of its first character
 * @param to place behind its last character
 * @param text as found
 */
record Token(int from, int to, String text) {
  private static final Pattern TOKEN =
      Pattern.compile("\\d+(?:[.,]\\d+)*|\\p{L}[\\p{L}\\p{M}'’]*\\.?|\\S");

  static List<Token> of(String text) {
    List<Token> tokens = new ArrayList<>();
    Matcher found = TOKEN.matcher(text);
    while (found.find()) {
      tokens.add(new Token(found.start(), found.end(), found.group()));
    }
    return tokens;
  }

  /** As the vocabulary compares it: small letters, no point behind. */
  String plain() {
    String small = text.toLowerCase(Locale.ROOT);
    return small.length() > 1 && small.endsWith(".")
        ? small.substring(0, small.length() - 1)
        : small;
  }

  boolean number() {
    return Character.isDigit(text.charAt(0));
  }

  boolean word() {
    return Character.isLetter(text.charAt(0));
  }

  boolean is(String sign) {
    return text.equals(sign);
  }
}
