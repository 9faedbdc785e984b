package org.comparanda.cli;

import java.util.concurrent.Callable;
import org.comparanda.daybook.Verdict;
import org.comparanda.storage.Collection;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proves that nothing was changed since a head hash was given, or says where it was. */
@Command(
    name = "verify",
    description = {
      "Look through every entry of the Day Book and every row that it keeps. With the head hash of",
      "a slip, a backup or an export, a cut end and a book rebuilt whole are found, too."
    },
    mixinStandardHelpOptions = true)
final class DayBookVerify implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(
      names = "--head",
      paramLabel = "HASH",
      description = "Head hash as it stands on a slip, a backup or an export.")
  private @Nullable String head;

  DayBookVerify(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      Verdict verdict = head == null ? opened.verifyDayBook() : opened.verifyDayBook(head.strip());
      if (verdict instanceof Verdict.Broken broken) {
        terminal.say("The Day Book does not hold. " + broken.sentence());
        terminal.note(
            "Nothing was changed. Keep this file as it is and compare it with the latest backup.");
        return Terminal.PROBLEMS_FOUND;
      }
      Verdict.Sound sound = (Verdict.Sound) verdict;
      terminal.say(
          "The Day Book holds: "
              + Count.of(sound.entries(), "entry", "entries")
              + ", every row as it was written"
              + (head == null
                  ? ". Without --head a cut end or a book rebuilt whole can't be told."
                  : ", and nothing before the head " + head.strip() + " was changed."));
    }
    return Terminal.FINE;
  }
}
