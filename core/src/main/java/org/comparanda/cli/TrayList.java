package org.comparanda.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the trays with what lies in them. */
@Command(
    name = "list",
    description = "List the trays: lot, state, bones, how many of them are called.",
    mixinStandardHelpOptions = true)
final class TrayList implements Callable<Integer> {
  private final Terminal terminal;

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  TrayList(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      for (Tray tray : opened.trays().all()) {
        List<TrayBone> bones = opened.trays().bonesOf(tray.id());
        long called = bones.stream().filter(b -> !opened.trays().callsOn(b.id()).isEmpty()).count();
        long stopped =
            bones.stream().filter(b -> b.standing() == TrayBone.Standing.STOPPED).count();
        terminal.say(
            tray.id().value()
                + ": "
                + tray.name()
                + "; lot "
                + tray.lot()
                + "; "
                + tray.state().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                + "; "
                + Count.of(bones.size(), "bone")
                + ", "
                + called
                + " called"
                + (stopped > 0 ? ", " + stopped + " set aside as possibly human" : "")
                + (tray.hazards().isBlank() ? "" : "; hazards: " + tray.hazards()));
      }
    }
    return Terminal.FINE;
  }
}
