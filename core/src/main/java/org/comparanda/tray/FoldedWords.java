package org.comparanda.tray;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words without case and accents, as the search compares them: runs of letters and digits. */
public record FoldedWords(List<String> words) {
  public FoldedWords {
    words = List.copyOf(words);
  }

  /** The words of a text, in its order. */
  public static FoldedWords of(String text) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFD)
        .toLowerCase(Locale.ROOT)
        .codePoints()
        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
        .forEach(
            c -> {
              if (Character.isLetterOrDigit(c)) {
                word.appendCodePoint(c);
              } else if (!word.isEmpty()) {
                words.add(word.toString());
                word.setLength(0);
              }
            });
    if (!word.isEmpty()) {
      words.add(word.toString());
    }
    return new FoldedWords(words);
  }

  /** Whether these stand side by side in other words, the last one at least begun. */
  public boolean standIn(FoldedWords others) {
    for (int from = 0; from + words.size() <= others.words.size(); from++) {
      if (standAt(others, from)) {
        return true;
      }
    }
    return false;
  }

  private boolean standAt(FoldedWords others, int from) {
    int last = words.size() - 1;
    for (int i = 0; i < last; i++) {
      if (!others.words.get(from + i).equals(words.get(i))) {
        return false;
      }
    }
    return last >= 0 && others.words.get(from + last).startsWith(words.get(last));
  }

  /** How many letters and digits they have. */
  public int length() {
    return words.stream().mapToInt(String::length).sum();
  }
}
