package org.comparanda.tray;

import java.util.List;

/** Knows under which other names things stand in the record. */
public interface OtherNames {
  /**
   * What may stand in the record for these words: an element's key for its name in any language, a
   * taxon's other names for one of them; empty where no other name is known.
   *
   * @param asked one word, or several that stand side by side
   */
  List<String> of(FoldedWords asked);
}
