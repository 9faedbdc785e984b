package org.comparanda.bone;

import java.util.Locale;
import java.util.ResourceBundle;

/**
 * What the elements are called in one language. English names stand in the protocol; other
 * languages have a file beside this class, {@code elements_de.properties} and so on, by key. What a
 * file lacks keeps its name from the protocol.
 */
public final class ElementNames {
  private static final ResourceBundle.Control NO_DETOUR =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private final ResourceBundle bundle;

  private ElementNames(ResourceBundle bundle) {
    this.bundle = bundle;
  }

  /** The names in a language. */
  public static ElementNames in(Locale language) {
    String file = ElementNames.class.getPackageName() + ".elements";
    return new ElementNames(ResourceBundle.getBundle(file, language, NO_DETOUR));
  }

  /** What an element is called; its key in words where the language has no name of its own. */
  public String of(ElementKey key) {
    String name = key.value();
    return bundle.containsKey(name) ? bundle.getString(name) : name;
  }

  /** What an element is called. */
  public String of(Element element) {
    return of(element.key(), element.name());
  }

  /** What the element of a key is called; as in the protocol where the file lacks it. */
  public String of(ElementKey key, String inProtocol) {
    return bundle.containsKey(key.value()) ? bundle.getString(key.value()) : inProtocol;
  }
}
