package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets a bone aside as possibly human. */
@Command(
    name = "stop",
    description = {
      "Set a bone aside as possibly human, at once: measuring closes for it, and whatever was",
      "computed of it is wiped. Take no picture."
    },
    mixinStandardHelpOptions = true)
final class TrayStop implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "BONE", description = "Number of the bone.")
  private String bone = "";

  @Option(names = "--reason", paramLabel = "TEXT", description = "What was seen.")
  private String reason = "";

  TrayStop(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      CannotDo.orElse(
          opened
              .stops()
              .setAside(new BoneId(bone), by.person(), terminal.clock().instant(), reason));
      terminal.say(
          bone
              + " is set aside: it may be human. What was computed of it was wiped. Take no"
              + " picture of it.");
      terminal.say(opened.houseRules().now(RuleName.CONTACT_CARD));
    }
    return Terminal.FINE;
  }
}
