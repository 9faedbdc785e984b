package org.comparanda.gui.sizedesk;

import java.util.List;

/**
 * A published equation, ready for the eye.
 *
 * @param answer its value for the bone, or what is missing
 * @param cautions each a sentence that the reader must not miss
 * @param facts formula, range, animals, citation and the like
 * @param onShelf how it does on the shelf's own animals, a sentence each
 */
public record EquationShown(
    String answer, List<String> cautions, List<Fact> facts, List<String> onShelf) {
  public EquationShown {
    cautions = List.copyOf(cautions);
    facts = List.copyOf(facts);
    onShelf = List.copyOf(onShelf);
  }

  static EquationShown blank() {
    return new EquationShown("", List.of(), List.of(), List.of());
  }
}
