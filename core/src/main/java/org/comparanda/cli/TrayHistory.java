package org.comparanda.cli;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.BoneEvent;
import org.comparanda.tray.CallWords;
import org.comparanda.tray.TrayBone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The history of a bone as a dated strip. */
@Command(
    name = "history",
    description = "Everything that was said of a bone, by date.",
    mixinStandardHelpOptions = true)
final class TrayHistory implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Parameters(index = "0", paramLabel = "BONE", description = "Number of the bone.")
  private String bone = "";

  TrayHistory(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      TrayBone found = TrayNamed.bone(opened, bone);
      List<BoneEvent> strip =
          BoneEvent.strip(
              opened.trays().callsOn(found.id()),
              opened.trays().elementCallsOn(found.id()),
              opened.stops().of(found.id()),
              CallWords.in(Locale.ENGLISH));
      for (BoneEvent event : strip) {
        terminal.say(
            event.at().toString().substring(0, 16)
                + "  "
                + event.person().value()
                + "  "
                + event.words());
      }
      if (strip.isEmpty()) {
        terminal.say("Nothing was said of " + bone + " yet.");
      }
    }
    return Terminal.FINE;
  }
}
