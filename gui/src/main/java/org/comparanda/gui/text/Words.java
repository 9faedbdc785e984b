package org.comparanda.gui.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;

/**
 * The words of one part of the program in one language. A part has its own file, {@code
 * PART.properties} beside this class, English without a suffix.
 *
 * <p>Errors: {@link java.util.MissingResourceException} if the part or a key is missing; a test
 * looks at every key.
 */
public final class Words {
  private final ResourceBundle bundle;
  private final Locale locale;
  private final Sentences sentences;

  private Words(ResourceBundle bundle, Locale locale) {
    this.bundle = bundle;
    this.locale = locale;
    this.sentences = Sentences.in(locale);
  }

  /** The words of a part, English where there are none in that language. */
  public static Words of(String part, Locale locale) {
    ResourceBundle.Control noDetour =
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
    String file = Words.class.getPackageName() + "." + part;
    return new Words(ResourceBundle.getBundle(file, locale, noDetour), locale);
  }

  /** The language asked for. */
  public Locale locale() {
    return locale;
  }

  /** The keys of this part. */
  public Set<String> keys() {
    return bundle.keySet();
  }

  /** The words of another part in the same language. */
  public Words part(String other) {
    return of(other, locale);
  }

  /** What core says in English (a reason, a remedy, a warning), in this language. */
  public String said(String english) {
    return sentences.said(english);
  }

  /** The text of a key as it stands, where there is one. */
  public Optional<String> find(String key) {
    return bundle.containsKey(key) ? Optional.of(bundle.getString(key)) : Optional.empty();
  }

  /** The text of a key, its places {0}, {1}, … filled; numbers written in the person's notation. */
  public String get(String key, Object... places) {
    return new MessageFormat(bundle.getString(key), locale).format(places);
  }
}
