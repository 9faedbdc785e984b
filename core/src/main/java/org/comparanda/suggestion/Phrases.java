package org.comparanda.suggestion;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The sentences of a package in one language: {@code phrases.properties} beside its classes is
 * English, with a suffix other languages. A key with its places filled is a sentence or a part of
 * one; a language without a file speaks English.
 *
 * <p>Errors: {@link java.util.MissingResourceException} if a key is missing; a test compares the
 * files.
 */
public final class Phrases {
  private static final ResourceBundle.Control NO_DETOUR =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private final ResourceBundle bundle;
  private final Locale locale;

  private Phrases(ResourceBundle bundle, Locale locale) {
    this.bundle = bundle;
    this.locale = locale;
  }

  /** The sentences of the answers. */
  static Phrases in(Locale language) {
    return beside(Phrases.class, language);
  }

  /** The sentences of the package of a class. */
  public static Phrases beside(Class<?> part, Locale language) {
    String file = part.getPackageName() + ".phrases";
    ResourceBundle found = ResourceBundle.getBundle(file, language, NO_DETOUR);
    // Numbers follow the language of the words: English ones keep the point whatever was asked.
    Locale spoken = found.getLocale().equals(Locale.ROOT) ? Locale.ENGLISH : language;
    return new Phrases(found, spoken);
  }

  /** How numbers are written beside these sentences. */
  public Locale locale() {
    return locale;
  }

  /** The text of a key, its places filled; whole numbers are written without grouping. */
  public String say(String key, Object... places) {
    return new MessageFormat(bundle.getString(key), locale).format(places);
  }

  /** "A", "A or B", "A, B or C". */
  String either(List<String> items) {
    return joined(items, "or");
  }

  /** "A", "A and B", "A, B and C". */
  String all(List<String> items) {
    return joined(items, "and");
  }

  /** A length or plain number with digits that fit a caliper: 0.42, 7.3, 19. */
  String number(double value) {
    double size = Math.abs(value);
    String pattern = size >= 10 ? "%.0f" : size >= 1 ? "%.1f" : "%.2f";
    return String.format(locale, pattern, value);
  }

  /** "5 in 100", "1 in 100", "5 in 1000". */
  String outOf(double part) {
    boolean hundred = part >= 0.01;
    long hits = Math.round((hundred ? 100 : 1000) * part);
    return say(hundred ? "in.hundred" : "in.thousand", Long.toString(hits));
  }

  private String joined(List<String> items, String key) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    int end = items.size() - 1;
    return say(key, String.join(", ", items.subList(0, end)), items.get(end));
  }
}
