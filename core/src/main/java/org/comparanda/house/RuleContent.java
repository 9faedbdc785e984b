package org.comparanda.house;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.suggestion.Phrases;

/** What a rule may be set to: whether a text can be taken, and what can, in words. */
interface RuleContent {
  boolean takes(String content);

  /** "a number from 0.001 to 0.2", to stand behind "is not", in the words of a language. */
  String allowed(Locale language);

  /**
   * A phrase of {@code phrases.properties} beside this class, English where a language has none.
   */
  private static String say(Locale language, String key, Object... places) {
    return Phrases.beside(RuleContent.class, language).say(key, places);
  }

  /** Why this text can't be taken; empty when it can. */
  default Optional<String> refusal(String content) {
    return takes(content)
        ? Optional.empty()
        : Optional.of("\"" + content + "\" is not " + allowed(Locale.ENGLISH) + ".");
  }

  /** Any text that says something. */
  record Text() implements RuleContent {
    @Override
    public String allowed(Locale language) {
      return say(language, "text");
    }

    @Override
    public boolean takes(String content) {
      return !content.isBlank();
    }
  }

  /** A plain decimal number, both ends allowed. */
  record Decimal(double low, double high) implements RuleContent {
    @Override
    public boolean takes(String content) {
      return content.matches("[0-9]*\\.?[0-9]{1,9}")
          && Double.parseDouble(content) >= low
          && Double.parseDouble(content) <= high;
    }

    @Override
    public String allowed(Locale language) {
      return say(language, "decimal", String.valueOf(low), String.valueOf(high));
    }
  }

  /** A whole number, both ends allowed. */
  record Whole(int low, int high) implements RuleContent {
    @Override
    public boolean takes(String content) {
      return content.matches("[0-9]{1,6}")
          && Integer.parseInt(content) >= low
          && Integer.parseInt(content) <= high;
    }

    @Override
    public String allowed(Locale language) {
      return say(language, "whole", String.valueOf(low), String.valueOf(high));
    }
  }

  /** A content in the words of a language; as it is kept where it is no word of the program. */
  default String said(String content, Locale language) {
    return content;
  }

  /** What a person typed in a language, as it is kept. */
  default String kept(String typed, Locale language) {
    return typed;
  }

  private static String setting(Locale language, String word) {
    return say(language, "setting." + word);
  }

  /** One of some words. */
  record OneOf(List<String> words) implements RuleContent {
    public OneOf {
      words = List.copyOf(words);
    }

    @Override
    public boolean takes(String content) {
      return words.contains(content);
    }

    @Override
    public String allowed(Locale language) {
      return words.stream()
          .map(word -> setting(language, word))
          .reduce((a, b) -> say(language, "or", a, b))
          .orElse("");
    }

    @Override
    public String said(String content, Locale language) {
      return words.contains(content) ? setting(language, content) : content;
    }

    @Override
    public String kept(String typed, Locale language) {
      return words.stream()
          .filter(word -> setting(language, word).equals(typed))
          .findFirst()
          .orElse(typed);
    }
  }

  /** Pairs NAME=TEXT with semicolons between them, or none. */
  record Pairs(String name, Optional<List<String>> texts) implements RuleContent {
    static final String NONE = "none";

    @Override
    public boolean takes(String content) {
      return content.equals(NONE) || pairs(content).stream().allMatch(this::sound);
    }

    private boolean sound(String pair) {
      int sign = pair.indexOf('=');
      String text = pair.substring(sign + 1).strip();
      return sign > 0 && !text.isEmpty() && texts.map(t -> t.contains(text)).orElse(true);
    }

    /** The pairs, as written. */
    static List<String> pairs(String content) {
      return content.equals(NONE)
          ? List.of()
          : List.of(content.split(";")).stream().map(String::strip).toList();
    }

    @Override
    public String allowed(Locale language) {
      String text =
          texts
              .map(t -> say(language, "pair.one_of", String.join(", ", t)))
              .orElseGet(() -> say(language, "pair.reason"));
      return say(language, "pairs", setting(language, NONE), say(language, "pair", name, text));
    }

    @Override
    public String said(String content, Locale language) {
      return content.equals(NONE) ? setting(language, NONE) : content;
    }

    @Override
    public String kept(String typed, Locale language) {
      return typed.equals(setting(language, NONE)) ? NONE : typed;
    }
  }
}
