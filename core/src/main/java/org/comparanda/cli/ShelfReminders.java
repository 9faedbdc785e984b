package org.comparanda.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.Callable;
import org.comparanda.register.HandOver;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Which animals are to be handed over soon. */
@Command(
    name = "reminders",
    description = {
      "List animals that are to be handed over within 60 days, or were. What holds is what the",
      "permit itself says; this list decides nothing."
    },
    mixinStandardHelpOptions = true)
final class ShelfReminders implements Callable<Integer> {
  private final Terminal terminal;

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  ShelfReminders(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      LocalDate today = LocalDate.now(terminal.clock().withZone(ZoneOffset.UTC));
      List<HandOver> due = HandOver.due(opened.register().all(), today);
      due.forEach(one -> terminal.say(one.sentence()));
      terminal.note(
          Count.of(due.size(), "hand-over") + " due within " + HandOver.DAYS_BEFORE + " days.");
    }
    return Terminal.FINE;
  }
}
