package org.comparanda.cli;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.concurrent.Callable;
import org.comparanda.pile.Arrival;
import org.comparanda.storage.Collection;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records something that came in. */
@Command(
    name = "add",
    description = "Record something that came in to become a comparative skeleton.",
    mixinStandardHelpOptions = true)
final class PileAdd implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "NUMBER", description = "Its number in the book of arrivals.")
  private String number = "";

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--taxon", required = true, paramLabel = "NAME", description = "What it is.")
  private String taxon = "";

  @Option(names = "--from", required = true, paramLabel = "TEXT", description = "From whom, where.")
  private String from = "";

  @Option(names = "--what", paramLabel = "TEXT", description = "carcass (if not said), skeleton, …")
  private String what = "carcass";

  @Option(names = "--came-in", paramLabel = "DAY", description = "2026-11-25; today if not said.")
  private @Nullable LocalDate cameIn;

  @Option(
      names = "--stage",
      paramLabel = "STAGE",
      description = "frozen (if not said), macerating, cleaned or to_measure.")
  private Arrival.Stage stage = Arrival.Stage.FROZEN;

  @Option(names = "--place", paramLabel = "TEXT", description = "Where it lies.")
  private String place = "";

  @Option(names = "--permit", paramLabel = "NUMBER", description = "Its permit.")
  private String permit = "";

  @Option(names = "--remarks", paramLabel = "TEXT", description = "Anything else.")
  private String remarks = "";

  PileAdd(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    LocalDate today = LocalDate.ofInstant(terminal.clock().instant(), ZoneOffset.UTC);
    LocalDate day = cameIn == null ? today : cameIn;
    if (day.isAfter(today)) {
      throw new CannotDo(day + " lies ahead. Nothing was stored. Give the day it came in.");
    }
    try (Collection opened = collection.open(terminal)) {
      if (opened.pile().arrival(number).isPresent()) {
        throw new CannotDo(
            "The number \""
                + number
                + "\" is on the pile already. Nothing was stored. Give it a number of its own.");
      }
      TaxonName name = new TaxonName(taxon);
      TaxonTree taxa = HouseTables.of(opened).taxa();
      taxa.standsUnder(name).ifPresent(terminal::note);
      if (taxa.taxon(name).isEmpty() && !opened.animals().shelf().taxa().contains(name)) {
        terminal.note(
            "No taxon \"" + taxon + "\" is known here: it is kept as written, without a gain.");
      }
      opened.pile().save(new Arrival(number, name, what, day, from, stage, place, permit, remarks));
      terminal.say("Put " + number + ", " + taxon + ", on the pile.");
    }
    return Terminal.FINE;
  }
}
