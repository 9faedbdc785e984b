package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallDesk;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a call back. */
@Command(
    name = "withdraw",
    description = "Take a call back by a row of its own; the call stays in the history.",
    mixinStandardHelpOptions = true)
final class TrayWithdraw implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "BONE", description = "Number of the bone.")
  private String bone = "";

  @Parameters(index = "1", paramLabel = "CALL", description = "Number of the call.")
  private long call;

  @Option(names = "--reason", paramLabel = "TEXT", description = "Why.")
  private String reason = "";

  TrayWithdraw(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      Call taken =
          opened.trays().callsOn(TrayNamed.bone(opened, bone).id()).stream()
              .filter(c -> c.id() == call)
              .findFirst()
              .orElseThrow(
                  () ->
                      new CannotDo(
                          bone
                              + " has no call "
                              + call
                              + ". Nothing was changed. Look at tray"
                              + " history."));
      Call row =
          new Call(
              0,
              taken.bone(),
              taken.taxon(),
              taken.qualifier(),
              by.person(),
              terminal.clock().instant(),
              reason,
              taken.sawSuggestion());
      CannotDo.orElse(
          new CallDesk(opened.trays(), HouseTables.of(opened).taxa()).withdraw(taken, row));
      terminal.say("Call " + call + " on " + bone + " was taken back. It stays in the history.");
    }
    return Terminal.FINE;
  }
}
