package org.comparanda.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.comparanda.house.Right;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.NumberRule;
import org.comparanda.tray.Tray;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows or sets the rule by which the bones of a tray are numbered. */
@Command(
    name = "number",
    description = {
      "Show the next bone number of a tray, or set its rule: text with {year}, {lot}, {tray} and",
      "once {number} or {number:4}. Numbers given before stay, and none comes again."
    },
    mixinStandardHelpOptions = true)
final class TrayNumber implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "TRAY", description = "Key of the tray.")
  private String id = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "RULE",
      description = "The rule from now on, for example \"H-{year}-{number:4}\".")
  private @Nullable String rule;

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  @Option(names = "--by", paramLabel = "PERSON", description = "Who sets the rule; a keeper does.")
  private String person = "";

  TrayNumber(Terminal terminal) {
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
      if (rule != null) {
        NumberRule next = read(rule);
        PersonId keeper =
            CannotDo.orElse(
                opened
                    .grants()
                    .rights()
                    .asked(keeper(), Right.KEEPER, "the rule of bone numbers stays"));
        opened.by(keeper).numbering().setRule(tray.id(), next);
      }
      terminal.say(
          "The next bone of "
              + tray.name()
              + " gets the number "
              + opened.numbering().next(tray)
              + ", by the rule "
              + opened.numbering().ruleOf(tray.id()).pattern()
              + ".");
    }
    return Terminal.FINE;
  }

  private PersonId keeper() {
    if (person.isBlank()) {
      throw new CannotDo(
          "Nobody sets the rule. Nothing was changed. Name a keeper by --by PERSON.");
    }
    return new PersonId(person.strip());
  }

  private static NumberRule read(String text) {
    return NumberRule.read(text)
        .fold(
            read -> read,
            none -> {
              throw new CannotDo(none.reason() + " Nothing was changed. " + none.remedy());
            });
  }
}
