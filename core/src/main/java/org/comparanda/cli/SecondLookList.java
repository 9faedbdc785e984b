package org.comparanda.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.secondlook.Waiting;
import org.comparanda.storage.Collection;
import org.comparanda.tray.TrayBone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists what waits for a person. */
@Command(
    name = "list",
    description = {
      "List the bones that wait for this person. Neither call nor reason is shown: the look is blind."
    },
    mixinStandardHelpOptions = true)
final class SecondLookList implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  SecondLookList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      List<TrayBone> waiting =
          SecondLookCommand.desk(opened).waitingFor(by.person()).stream()
              .map(Waiting::bone)
              .toList();
      for (TrayBone bone : waiting) {
        terminal.say(
            bone.id()
                + ": "
                + Words.of(bone.side())
                + " "
                + bone.element()
                + ", "
                + Words.of(bone.portion())
                + "; tray "
                + bone.tray().value());
      }
      terminal.note(Count.of(waiting.size(), "bone") + " waiting for " + by.person().value() + ".");
    }
    return Terminal.FINE;
  }
}
