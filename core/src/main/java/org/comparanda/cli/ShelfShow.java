package org.comparanda.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.measurement.How;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.CardField;
import org.comparanda.register.Changes;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** One animal's card. */
@Command(
    name = "show",
    description = {
      "Show an animal's card and its bones; also of one that was retired or merged into another."
    },
    mixinStandardHelpOptions = true)
final class ShelfShow implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "NUMBER", description = "Catalogue number.")
  private String number = "";

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  @Option(names = "--history", description = "Also every change, as the Day Book has it.")
  private boolean history;

  ShelfShow(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      AnimalCard card = find(opened, number);
      terminal.say(card.id() + ", " + Changes.words(card.standing()));
      for (CardField field : CardField.values()) {
        String text = field.text(card);
        if (!text.isEmpty() && !text.equals("not known")) {
          terminal.say("  " + field.words() + ": " + text);
        }
      }
      Protocol protocol = ReferenceTables.shipped().protocol();
      card.animal().bones().forEach(bone -> terminal.say("  " + line(protocol, bone)));
      if (history) {
        opened.register().history(card.id()).forEach(this::say);
      }
    }
    return Terminal.FINE;
  }

  private void say(DayBookEntry entry) {
    Change change = Change.read(entry.content());
    String by = change.by().isEmpty() ? "" : ", by " + change.by();
    terminal.say(entry.at() + by + ":");
    List.of(change.words().split("; ", -1)).forEach(words -> terminal.say("  " + words));
  }

  private static String tape(Protocol protocol, ShelfBone bone, MeasurementCode code) {
    return protocol.how(bone.element(), code) == How.TAPE ? " (tape)" : "";
  }

  private static String line(Protocol protocol, ShelfBone bone) {
    String flags =
        bone.flags().stream()
            .map(f -> f.name().toLowerCase(java.util.Locale.ROOT))
            .sorted()
            .collect(Collectors.joining(", "));
    return Changes.name(bone)
        + bone.values().entrySet().stream()
            .map(v -> " " + v.getKey() + "=" + v.getValue() + tape(protocol, bone, v.getKey()))
            .collect(Collectors.joining())
        + (flags.isEmpty() ? "" : " (" + flags + ")");
  }

  static AnimalCard find(Collection opened, String number) {
    return number.isBlank()
        ? missing(number)
        : opened.register().card(new AnimalId(number)).orElseGet(() -> missing(number));
  }

  private static AnimalCard missing(String number) {
    throw new CannotDo(
        "There is no animal \"" + number + "\". Nothing was done. Check the catalogue number.");
  }
}
