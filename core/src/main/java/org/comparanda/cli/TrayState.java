package org.comparanda.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Tray;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Moves a tray on. */
@Command(
    name = "state",
    description = "Say where a tray stands: waiting, on_the_bench, second_look, done, set_aside.",
    mixinStandardHelpOptions = true)
final class TrayState implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "TRAY", description = "Key of the tray.")
  private String id = "";

  @Parameters(index = "1", paramLabel = "STATE", description = "Where it stands.")
  private Tray.State state = Tray.State.WAITING;

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  TrayState(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      Tray tray =
          opened.trays().all().stream()
              .filter(t -> t.id().value().equals(id))
              .findFirst()
              .orElseThrow(
                  () ->
                      new CannotDo(
                          "There is no tray \""
                              + id
                              + "\". Nothing was changed. Look at tray list."));
      opened
          .trays()
          .save(
              new Tray(
                  tray.id(),
                  tray.lot(),
                  tray.name(),
                  tray.age(),
                  tray.provenance(),
                  tray.hazards(),
                  state));
      terminal.say(
          tray.name() + " is now " + state.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ".");
    }
    return Terminal.FINE;
  }
}
