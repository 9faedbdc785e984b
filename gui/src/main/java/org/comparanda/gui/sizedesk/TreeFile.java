package org.comparanda.gui.sizedesk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.LineTree;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.phylo.Newick;

/**
 * A tree that a person brought.
 *
 * @param name of its file
 */
public record TreeFile(String name, LineTree tree) {
  /** Reads a tree in Newick notation, or says why it can't be read. */
  static Outcome<TreeFile> read(Path file, Words words) {
    String name = String.valueOf(file.getFileName());
    try {
      return Newick.read(Files.readString(file))
          .then(tree -> Outcome.of(new TreeFile(name, LineTree.of(tree))));
    } catch (IOException e) {
      return Outcome.none(words.get("file.unreadable", name), words.get("file.unreadable.remedy"));
    }
  }
}
