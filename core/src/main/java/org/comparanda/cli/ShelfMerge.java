package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.Merge;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Two catalogue numbers that are one animal. */
@Command(
    name = "merge",
    description = {
      "Make two catalogue numbers one animal. The kept one gets what it lacks; where both say",
      "something, the kept one stays. The other's record stays and points to the kept one."
    },
    mixinStandardHelpOptions = true)
final class ShelfMerge implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "KEPT", description = "The number that stays.")
  private String kept = "";

  @Parameters(index = "1", paramLabel = "OTHER", description = "The number that was a second one.")
  private String other = "";

  @Option(names = "--dry-run", description = "Only say what would come of it.")
  private boolean dryRun;

  @Mixin private ChangeArguments change = new ChangeArguments();

  ShelfMerge(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = change.open(terminal)) {
      AnimalId stays = ShelfShow.find(opened, kept).id();
      AnimalId second = ShelfShow.find(opened, other).id();
      Merge merge =
          ChangeArguments.done(
              dryRun
                  ? opened.register().wouldMerge(stays, second)
                  : opened.register().merge(stays, second, change.note()));
      merge
          .differing()
          .forEach(
              d ->
                  terminal.say(
                      "%s: %s says \"%s\", %s says \"%s\", which stays."
                          .formatted(d.what(), other, d.was(), kept, d.is())));
      terminal.say(
          "%s %s into %s, which has %s."
              .formatted(
                  dryRun ? "Would merge" : "Merged",
                  other,
                  kept,
                  Count.of(merge.result().animal().bones().size(), "bone")));
      if (!merge.measured().isEmpty()) {
        terminal.say(
            Count.of(merge.measured().size(), "bone")
                + " measured on the Shelf "
                + (dryRun ? "would go" : "went")
                + " along with the readings.");
      }
      return merge.differing().isEmpty() ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
    }
  }
}
