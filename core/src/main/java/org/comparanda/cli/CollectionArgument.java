package org.comparanda.cli;

import java.nio.file.Path;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Option;

/** Which collection a command works on. */
final class CollectionArgument {
  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path file = Path.of("");

  Path file() {
    return file;
  }

  /** Opens it; what is doubtful about its place goes to the messages. */
  Collection open(Terminal terminal) {
    Collection opened = Collection.open(file, terminal.clock());
    opened.caution().ifPresent(terminal::note);
    return opened;
  }
}
