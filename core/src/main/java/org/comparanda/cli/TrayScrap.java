package org.comparanda.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Scrap;
import org.comparanda.tray.TrayId;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Counts and weighs scrap. */
@Command(
    name = "scrap",
    description = "Record pieces of a tray that nobody will name: how many, and what they weigh.",
    mixinStandardHelpOptions = true)
final class TrayScrap implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "TRAY", description = "Key of the tray.")
  private String tray = "";

  @Parameters(index = "1", paramLabel = "PIECES", description = "How many pieces.")
  private long pieces;

  @Option(names = "--grams", paramLabel = "G", description = "Mass of all of them.")
  private @Nullable Double grams;

  @Option(names = "--remarks", paramLabel = "TEXT", description = "What they are.")
  private String remarks = "";

  TrayScrap(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      TrayId onto = TrayNamed.tray(opened, tray).id();
      opened.scraps().append(scrap(onto));
      List<Scrap> all = opened.scraps().of(onto);
      terminal.say(
          "Recorded "
              + Count.of(pieces, "piece")
              + " of scrap; "
              + tray
              + " has now "
              + Count.of(all.stream().mapToLong(Scrap::pieces).sum(), "piece")
              + ".");
    }
    return Terminal.FINE;
  }

  private Scrap scrap(TrayId onto) {
    try {
      return new Scrap(
          0,
          onto,
          pieces,
          Optional.ofNullable(grams),
          by.person(),
          terminal.clock().instant(),
          remarks);
    } catch (IllegalArgumentException refused) {
      throw new CannotDo(refused.getMessage() + " Nothing was recorded. Count them again.");
    }
  }
}
