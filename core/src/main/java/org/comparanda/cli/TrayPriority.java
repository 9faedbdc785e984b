package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Priority;
import org.comparanda.tray.Tray;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets how soon a tray is wanted. */
@Command(
    name = "priority",
    description = {
      "Move a tray up or down: RANK 1 (first) to 5 (last), 3 unless set; with the reason and, where",
      "somebody asked for it, who."
    },
    mixinStandardHelpOptions = true)
final class TrayPriority implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "TRAY", description = "Key of the tray.")
  private String tray = "";

  @Parameters(index = "1", paramLabel = "RANK", description = "1 (first) to 5 (last).")
  private int rank = 3;

  @Option(names = "--reason", paramLabel = "TEXT", description = "Why.")
  private String reason = "";

  @Option(names = "--requested-by", paramLabel = "NAME", description = "Who asked for it.")
  private String requester = "";

  TrayPriority(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      Tray moved = TrayNamed.tray(opened, tray).withPriority(priority());
      opened.by(by.person()).trays().save(moved);
      terminal.say(moved.name() + " has now priority " + rank + ".");
    }
    return Terminal.FINE;
  }

  private Priority priority() {
    try {
      return new Priority(rank, reason, requester);
    } catch (IllegalArgumentException refused) {
      throw new CannotDo(refused.getMessage() + " Nothing was changed. Say it by --reason.");
    }
  }
}
