package org.comparanda.cli;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.CardEdit;
import org.comparanda.register.CardField;
import org.comparanda.register.CardProblem;
import org.comparanda.register.Change;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Changes an animal's card and one of its bones, or adds an animal; all of it or nothing. */
@Command(
    name = "edit",
    description = {
      "Change an animal, or add one (--new). Fields: taxon, source, source_name, drawer, sex,",
      "age_class, origin, flags, body_length, body_length_on, body_length_how, body_length_kind,",
      "body_mass and the same, permit, permit_words, export, hand_over_by, remarks. All of what is",
      "said is stored, or nothing and a line for each thing wrong."
    },
    mixinStandardHelpOptions = true)
final class ShelfEdit implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "NUMBER", description = "Catalogue number.")
  private String number = "";

  @Option(
      names = "--new",
      description = "The animal is new; its number must never have been given.")
  private boolean added;

  @Option(
      names = "--set",
      paramLabel = "FIELD=TEXT",
      description = "New text of a field, e.g. sex=female; FIELD= empties it.")
  private Map<String, String> typed = new java.util.LinkedHashMap<>();

  @ArgGroup(exclusive = false)
  private @Nullable BoneArguments bone;

  @Mixin private ChangeArguments change = new ChangeArguments();

  ShelfEdit(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    ReferenceTables words = ReferenceTables.shipped();
    Map<CardField, String> fields = fields();
    try (Collection opened = change.open(terminal)) {
      AnimalCard before = added ? blank(number) : ShelfShow.find(opened, number);
      CardEdit edit =
          new CardEdit(
              HouseTables.tree(opened, words),
              Set.copyOf(opened.animals().shelf().taxa()),
              LocalDate.now(terminal.clock().withZone(ZoneOffset.UTC)));
      AnimalCard edited = edit.apply(before, fields).fold(card -> card, this::refused);
      Optional.ofNullable(fields.get(CardField.TAXON))
          .filter(text -> !text.isBlank())
          .flatMap(text -> edit.tree().standsUnder(new TaxonName(text.strip())))
          .ifPresent(terminal::note);
      AnimalCard after =
          Optional.ofNullable(bone)
              .map(b -> ChangeArguments.done(b.edit().apply(edited, words.protocol())))
              .orElse(edited);
      if (added) {
        ChangeArguments.done(opened.register().add(after, change.note()));
        terminal.say("Added " + number + ".");
      } else {
        List<Change> made =
            ChangeArguments.done(opened.register().change(before, after, change.note()));
        made.forEach(one -> terminal.say(one.line()));
        terminal.say("Changed " + Count.of(made.size(), "thing") + " of " + number + ".");
      }
    }
    return Terminal.FINE;
  }

  private static AnimalCard blank(String number) {
    if (number.isBlank()) {
      throw new CannotDo("An animal needs a catalogue number. Nothing was stored.");
    }
    return AnimalCard.blank(new AnimalId(number.strip()));
  }

  private AnimalCard refused(List<CardProblem> problems) {
    List<String> lines =
        new java.util.ArrayList<>(problems.stream().map(CardProblem::line).toList());
    lines.add("Nothing was stored. Correct " + Count.of(problems.size(), "thing") + " above.");
    throw new CannotDo(lines);
  }

  private Map<CardField, String> fields() {
    Map<CardField, String> fields = new EnumMap<>(CardField.class);
    typed.forEach(
        (name, text) ->
            fields.put(
                CardField.ofWords(name)
                    .orElseThrow(
                        () ->
                            new CannotDo(
                                "\""
                                    + name
                                    + "\" is no field of a card. Nothing was stored. Fields stand"
                                    + " under --help.")),
                Optional.ofNullable(text).orElse("")));
    return fields;
  }
}
