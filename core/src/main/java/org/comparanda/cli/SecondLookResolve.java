package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Call;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Settles a bone. */
@Command(
    name = "resolve",
    description = {
      "Settle a bone that two people called: as a third person, or with --consensus as one of them",
      "after they agreed. The call holds from then on; the earlier ones stay."
    },
    mixinStandardHelpOptions = true)
final class SecondLookResolve implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Mixin private LookedCall looked = new LookedCall();

  @Option(names = "--consensus", description = "The people who differed agreed on it.")
  private boolean consensus;

  SecondLookResolve(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      LookDesk desk = SecondLookCommand.desk(opened);
      Call settled = looked.by(by.person(), opened, terminal);
      Call recorded =
          CannotDo.orElse(
              desk.resolve(settled, consensus ? Call.Kind.CONSENSUS : Call.Kind.THIRD_PERSON));
      terminal.say(
          "Call " + recorded.id() + " on " + looked.bone() + " holds now: " + looked.name() + ".");
    }
    return Terminal.FINE;
  }
}
