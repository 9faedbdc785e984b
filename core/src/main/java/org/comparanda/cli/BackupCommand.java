package org.comparanda.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.storage.PhotoCopies;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A whole copy of a collection's file and pictures, checked. */
@Command(
    name = "backup",
    description = {
      "Write a whole copy of a collection and check that it is equal. Its pictures go into the folder",
      "beside the copy, each checked against its hash."
    },
    mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "OUT", description = "The copy; nothing may stand there yet.")
  private Path out = Path.of("");

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  BackupCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      String head = opened.dayBookHead();
      opened.backUp(out);
      terminal.say(
          "Wrote "
              + out
              + ": "
              + rows(opened)
              + ", equal to the collection; nothing was held back; content hash "
              + opened.contentHash()
              + "; Day Book "
              + head
              + ".");
      return pictures(opened.copyPhotosBeside(out.toAbsolutePath()), terminal);
    }
  }

  /** Says how many pictures were copied and which were not. */
  static int pictures(PhotoCopies copies, Terminal terminal) {
    if (copies.copied() > 0) {
      terminal.say("Pictures: " + copies.copied() + " copied beside it, each equal to its hash.");
    }
    copies.problems().forEach(terminal::note);
    return copies.problems().isEmpty() ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  static String rows(Collection collection) {
    long[] rows = {0};
    collection.eachRow((table, row) -> rows[0]++);
    return Count.of(rows[0], "row");
  }
}
