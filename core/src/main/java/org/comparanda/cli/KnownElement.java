package org.comparanda.cli;

import java.util.List;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Shelf;
import org.comparanda.tables.ReferenceTables;

/** Elements by what a person typed, and what a shelf has of one. */
final class KnownElement {
  private KnownElement() {}

  /** Errors: {@link CannotDo} with a few that begin alike if the protocol lacks it. */
  static ElementKey of(String word) {
    List<Element> all = ReferenceTables.shipped().protocol().elements();
    ElementKey key = new ElementKey(word.isBlank() ? "?" : word.strip());
    if (all.stream().anyMatch(e -> e.key().equals(key))) {
      return key;
    }
    throw unknown(word, all.stream().map(Element::key).toList());
  }

  /** The shelf with the bones of an element alone; one that neither knows is refused. */
  static Shelf on(Shelf shelf, Protocol protocol, ElementKey element) {
    Shelf only =
        new Shelf(
            shelf.animals().stream()
                .map(
                    a ->
                        a.withBones(
                            a.bones().stream().filter(b -> b.element().equals(element)).toList()))
                .filter(a -> !a.bones().isEmpty())
                .toList());
    if (only.animals().isEmpty() && protocol.element(element).isEmpty()) {
      throw unknown(element.value(), protocol.elements().stream().map(Element::key).toList());
    }
    return only;
  }

  private static CannotDo unknown(String word, List<ElementKey> all) {
    String start = (word.isBlank() ? "?" : word.strip()).substring(0, 1);
    return new CannotDo(
        "No element \""
            + word
            + "\" is known. Nothing was done. Beginning with "
            + start
            + ": "
            + String.join(
                ", ", all.stream().map(ElementKey::value).filter(k -> k.startsWith(start)).toList())
            + ".");
  }
}
