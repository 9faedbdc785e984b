package org.comparanda.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Keeping;
import org.comparanda.tray.TrayBone;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Moves several bones at once. */
@Command(
    name = "move",
    description = {
      "Move bones together: onto another tray, to a box or shelf, or in and out of what stays in the",
      "house. All of them, or none."
    },
    mixinStandardHelpOptions = true)
final class TrayMove implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(arity = "1..*", paramLabel = "BONE", description = "Numbers of the bones.")
  private List<String> bones = List.of();

  @Option(names = "--to-tray", paramLabel = "TRAY", description = "Tray they go onto.")
  private @Nullable String tray;

  @Option(
      names = "--goes-to",
      paramLabel = "PLACE",
      description = "Box, shelf or drawer they go to.")
  private @Nullable String place;

  @Option(names = "--access", paramLabel = "WORD", description = "open or restricted.")
  private Keeping.@Nullable Access access;

  TrayMove(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (tray == null && place == null && access == null) {
      throw new CannotDo(
          "Nothing says where to. Nothing was changed. Say --to-tray, --goes-to or --access.");
    }
    try (Collection opened = collection.open(terminal)) {
      if (access != null) {
        Keepers.need(opened, by.person(), "nothing was changed");
      }
      List<TrayBone> moved = new ArrayList<>();
      for (String number : new LinkedHashSet<>(bones)) {
        TrayBone bone = TrayNamed.bone(opened, number);
        if (tray != null) {
          bone = bone.withTray(TrayNamed.tray(opened, tray).id());
        }
        Keeping keeping = bone.keeping();
        moved.add(
            bone.withKeeping(
                new Keeping(
                    place == null ? keeping.goesTo() : place.strip(),
                    access == null ? keeping.access() : access)));
      }
      opened.by(by.person()).trays().saveAll(moved);
      terminal.say("Moved " + Count.of(moved.size(), "bone") + ".");
    }
    return Terminal.FINE;
  }
}
