package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Opens a bone again. */
@Command(
    name = "open",
    description = {
      "Open a bone again that was set aside as possibly human. Only a named person with the right",
      "open_stop can, with a reason, which stays on record."
    },
    mixinStandardHelpOptions = true)
final class TrayOpen implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "BONE", description = "Number of the bone.")
  private String bone = "";

  @Option(
      names = "--reason",
      required = true,
      paramLabel = "TEXT",
      description = "Who looked at it, when, and what they said.")
  private String reason = "";

  TrayOpen(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      CannotDo.orElse(
          opened
              .stops()
              .openAgain(new BoneId(bone), by.person(), terminal.clock().instant(), reason));
      terminal.say(bone + " is open again. The reason is in the Day Book.");
    }
    return Terminal.FINE;
  }
}
