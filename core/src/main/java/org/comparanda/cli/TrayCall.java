package org.comparanda.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.comparanda.dossier.BesideCall;
import org.comparanda.dossier.Dossier;
import org.comparanda.reference.AnimalId;
import org.comparanda.storage.Collection;
import org.comparanda.suggestion.Comparison;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tables.TraitTable;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallDesk;
import org.comparanda.tray.Grounds;
import org.comparanda.tray.TraitAnswer;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.WrittenName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records a person's call on a bone. */
@Command(
    name = "call",
    description = {
      "Record a person's call on a bone; earlier calls stay. NAME at any rank, in open nomenclature:",
      "\"Ovis aries\", \"Ovis cf. aries\", \"Ovis sp.\", \"Bovidae gen. et sp. indet.\". A measured bone",
      "is compared, and a call against what the numbers say needs --why."
    },
    mixinStandardHelpOptions = true)
final class TrayCall implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();
  @Mixin private ByArgument by = new ByArgument();

  @Parameters(index = "0", paramLabel = "BONE", description = "Number of the bone.")
  private String bone = "";

  @Parameters(index = "1", paramLabel = "NAME", description = "What it was called.")
  private String name = "";

  @Option(
      names = "--basis",
      required = true,
      paramLabel = "TEXT",
      description = "What it rests on, in the person's words.")
  private String basis = "";

  @Option(names = "--how", paramLabel = "HOW", description = "by_eye, by_measurement or by_both.")
  private Grounds.How how = Grounds.How.NOT_SAID;

  @Option(
      names = "--compared-with",
      split = ",",
      paramLabel = "ANIMAL",
      description = "Comparative animals that were laid beside it.")
  private List<String> comparedWith = new ArrayList<>();

  @Option(
      names = "--trait",
      split = ",",
      paramLabel = "KEY=SEEN",
      description = "What was seen of a trait of a look-alike pair: yes, no or cant_see.")
  private List<String> traits = new ArrayList<>();

  @Option(
      names = "--why",
      paramLabel = "TEXT",
      description = "One line of why, where the call goes against the suggestion.")
  private String why = "";

  @Option(names = "--saw-suggestion", description = "The person had seen the suggestion before.")
  private boolean sawSuggestion;

  TrayCall(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    WrittenName written =
        WrittenName.read(name)
            .fold(
                read -> read,
                none -> {
                  throw new CannotDo(none.reason() + " Nothing was recorded. " + none.remedy());
                });
    List<TraitAnswer> answers = traits.stream().map(TraitWord::read).toList();
    try (Collection opened = collection.open(terminal)) {
      ReferenceTables tables = HouseTables.of(opened);
      TraitWord.everyKeyKnown(
          answers, TraitTable.shipped(Locale.ENGLISH, tables.protocol(), tables.taxa()));
      TrayBone called = TrayNamed.bone(opened, bone);
      HazardsLine.beforeTheFirstWord(terminal, opened, called);
      Call next =
          new Call(
                  0,
                  called.id(),
                  written.taxon(),
                  written.qualifier(),
                  by.person(),
                  terminal.clock().instant(),
                  basis,
                  sawSuggestion)
              .withGrounds(
                  new Grounds(
                      how,
                      comparedWith.stream().map(AnimalId::new).toList(),
                      why.strip(),
                      answers,
                      name.strip()));
      Beside beside = beside(opened, tables, called, written.taxon());
      CallDesk desk = new CallDesk(opened.trays(), tables.taxa());
      boolean first = opened.houseRules().inForce().callFirst() && !sawSuggestion;
      Call recorded =
          CannotDo.orElse(first ? desk.recordFirst(next, beside) : desk.record(next, beside));
      terminal.say("Recorded call " + recorded.id() + " on " + bone + ": " + name + ".");
      tables.taxa().standsUnder(written.taxon()).ifPresent(terminal::note);
    }
    return Terminal.FINE;
  }

  private static Beside beside(
      Collection opened, ReferenceTables tables, TrayBone bone, TaxonName called) {
    Tray tray = TrayNamed.tray(opened, bone.tray().value());
    return BesideCall.of(
        Comparison.of(
            opened.animals().shelf(),
            tables.protocol(),
            tables.taxa(),
            opened.houseRules().inForce().comparison().withAge(tray.age())),
        new Dossier(tray, bone, List.of(), opened.readings().of(bone.id())),
        called);
  }
}
