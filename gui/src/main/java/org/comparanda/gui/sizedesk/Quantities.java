package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;

/** What a shelf can be asked: the body's sizes and every measurement that animals on it have. */
final class Quantities {
  static final String BODY_LENGTH = "body_length";
  static final String BODY_MASS = "body_mass";

  private Quantities() {}

  /** Body sizes first, then measurements in protocol order, then those that tables brought. */
  static List<Quantity> of(Shelf shelf, Protocol protocol, Words words) {
    List<Quantity> found = new ArrayList<>();
    if (shelf.animals().stream().anyMatch(a -> a.bodyLengthMm().isPresent())) {
      String name = words.get("quantity.length");
      found.add(new Quantity(BODY_LENGTH, name, words.get("quantity.length.noun"), "", "mm"));
    }
    if (shelf.animals().stream().anyMatch(a -> a.bodyMassG().isPresent())) {
      String name = words.get("quantity.mass");
      found.add(new Quantity(BODY_MASS, name, words.get("quantity.mass.noun"), "", "g"));
    }
    Set<String> there = new TreeSet<>();
    shelf.animals().forEach(animal -> measured(animal, there));
    for (Measurement m : protocol.measurements()) {
      String key = m.element() + "." + m.code();
      if (there.remove(key)) {
        String bone = protocol.element(m.element()).map(Element::name).orElse("" + m.element());
        String noun = bone + " " + m.code();
        found.add(new Quantity(key, capital(noun), noun, m.name(), "mm"));
      }
    }
    there.forEach(
        key -> {
          String name = plain(key);
          found.add(new Quantity(key, name, name, "", ""));
        });
    return found;
  }

  private static void measured(Animal animal, Set<String> keys) {
    animal.bones().stream()
        .filter(b -> b.feedsFits())
        .forEach(b -> b.values().keySet().forEach(code -> keys.add(b.element() + "." + code)));
  }

  /** A table without elements has codes alone. */
  private static String plain(String key) {
    String unnamed = ElementKey.UNNAMED.value() + ".";
    return key.startsWith(unnamed) ? key.substring(unnamed.length()) : key.replace('.', ' ');
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
