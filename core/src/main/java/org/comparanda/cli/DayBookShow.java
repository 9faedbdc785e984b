package org.comparanda.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.storage.Collection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The latest entries, and the head hash. */
@Command(
    name = "show",
    description = "List the latest changes, oldest first, and the head hash that fixes them.",
    mixinStandardHelpOptions = true)
final class DayBookShow implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--last", paramLabel = "N", description = "How many; 40 when not said.")
  private int last = 40;

  @Option(
      names = "--of",
      paramLabel = "TEXT",
      description = "Only of what begins so, for example \"bone K-101\" or \"call\".")
  private String subject = "";

  DayBookShow(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      List<DayBookEntry> entries =
          opened.dayBook().entries().stream()
              .filter(e -> !e.bench().equals(DayBook.JOINING))
              .filter(
                  e ->
                      e.subject()
                          .toLowerCase(Locale.ROOT)
                          .startsWith(subject.toLowerCase(Locale.ROOT)))
              .sorted(Comparator.comparing(DayBookEntry::at))
              .toList();
      entries.subList(Math.max(0, entries.size() - last), entries.size()).forEach(this::line);
      terminal.say("Head of the Day Book: " + opened.dayBookHead());
    }
    return Terminal.FINE;
  }

  private void line(DayBookEntry entry) {
    Change change = Change.read(entry.content());
    terminal.say(
        entry.at()
            + "  "
            + entry.bench()
            + " "
            + entry.number()
            + "  "
            + entry.subject()
            + (change.by().isBlank() ? "" : "  by " + change.by())
            + (change.words().isBlank() ? "" : ": " + change.words()));
  }
}
