package org.comparanda.gui.text;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the words of the trade and our own ones mean: the one resource {@code terms}, where {@code
 * KEY.words} holds the forms of a word and {@code KEY} its meaning.
 */
public final class Glossary {
  private static final String FORMS = ".words";

  private final List<Term> terms;

  /**
   * One word.
   *
   * @param key under which it stands in the resource
   * @param word as it is listed
   * @param meaning one or two sentences
   * @param seen finds any form of it in a text
   */
  public record Term(String key, String word, String meaning, Pattern seen) {}

  private Glossary(List<Term> terms) {
    this.terms = List.copyOf(terms);
  }

  /** The glossary in one language, by word. */
  public static Glossary in(Locale locale) {
    Words words = Words.of("terms", locale);
    return new Glossary(
        words.keys().stream()
            .filter(key -> key.endsWith(FORMS))
            .map(key -> term(words, key.substring(0, key.length() - FORMS.length())))
            .sorted(Comparator.comparing(term -> term.word().toLowerCase(locale)))
            .toList());
  }

  private static Term term(Words words, String key) {
    List<String> forms = List.of(words.get(key + FORMS).split("[|]", -1));
    String any = forms.stream().map(Pattern::quote).collect(Collectors.joining("|"));
    return new Term(
        key,
        forms.get(0),
        words.get(key),
        Pattern.compile(
            "(?<![\\p{L}\\p{N}])(" + any + ")(?![\\p{L}\\p{N}])",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
  }

  /** All words. */
  public List<Term> terms() {
    return terms;
  }

  /** The words that stand in any of these texts, by word. */
  public List<Term> seenIn(Stream<String> texts) {
    Set<String> once = texts.collect(Collectors.toSet());
    return terms.stream()
        .filter(term -> once.stream().anyMatch(text -> term.seen().matcher(text).find()))
        .toList();
  }
}
