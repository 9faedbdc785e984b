package org.comparanda.cli;

import java.util.List;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.tables.ReferenceTables;

/** Elements by what a person typed. */
final class KnownElement {
  private KnownElement() {}

  /** Errors: {@link CannotDo} with a few that begin alike if the protocol lacks it. */
  static ElementKey of(String word) {
    List<Element> all = ReferenceTables.shipped().protocol().elements();
    ElementKey key = new ElementKey(word.isBlank() ? "?" : word.strip());
    if (all.stream().anyMatch(e -> e.key().equals(key))) {
      return key;
    }
    String start = key.value().substring(0, 1);
    throw new CannotDo(
        "No element \""
            + word
            + "\" is known. Nothing was recorded. Beginning with "
            + start
            + ": "
            + String.join(
                ", ",
                all.stream().map(e -> e.key().value()).filter(k -> k.startsWith(start)).toList())
            + ".");
  }
}
