package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallHistory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Records a second call. */
@Command(
    name = "record",
    description = {
      "Record a second call, made without seeing the first one or the suggestion. It replaces"
          + " nothing;",
      "the first call is shown afterwards."
    },
    mixinStandardHelpOptions = true)
final class SecondLookRecord implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Mixin private LookedCall looked = new LookedCall();

  SecondLookRecord(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      LookDesk desk = SecondLookCommand.desk(opened);
      Call second = looked.by(by.person(), opened, terminal);
      Call recorded = CannotDo.orElse(desk.lookAgain(second));
      Call first = new CallHistory(opened.trays().callsOn(recorded.bone())).first().orElseThrow();
      boolean same = first.taxon().equals(recorded.taxon());
      terminal.say(
          "Recorded call "
              + recorded.id()
              + " on "
              + looked.bone()
              + ". The first call was "
              + first.written()
              + " by "
              + first.person().value()
              + (same ? ": the same taxon." : ": another name. Settle it by second-look resolve."));
    }
    return Terminal.FINE;
  }
}
