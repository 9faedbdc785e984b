package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.comparanda.statistics.phylo.TipMatches;

/** What a reader must know of how taxa were found on the tree: sentences. */
final class TreeNotes {
  private TreeNotes() {}

  static List<String> of(TipMatches matches) {
    List<String> notes = new ArrayList<>();
    if (!matches.respelled().isEmpty()) {
      notes.add(
          "Found on the tree under another spelling: "
              + matches.respelled().entrySet().stream()
                  .map(e -> e.getKey() + " as " + e.getValue())
                  .collect(Collectors.joining(", "))
              + ".");
    }
    if (!matches.notInTree().isEmpty()) {
      notes.add("Not on the tree, so left out: " + String.join(", ", matches.notInTree()) + ".");
    }
    if (!matches.withoutName().isEmpty()) {
      notes.add("Tips without animals, pruned: " + String.join(", ", matches.withoutName()) + ".");
    }
    return notes;
  }
}
