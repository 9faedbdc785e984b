package org.comparanda.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Lot;
import org.comparanda.tray.LotNotes;
import org.comparanda.tray.LotProgress;
import org.comparanda.tray.Tray;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows a lot, or records what holds for all of it. */
@Command(
    name = "lot",
    description = {
      "Show a lot: where it was found, its hazards, whether its places may leave the house, its",
      "trays and how far they are. With an option, or PLACES, that is recorded first; what is not",
      "said stays as it was. PLACES: go_out, held_back (unless opened by a person with that right;",
      "so until said otherwise), never_out. Keepers alone say PLACES, as soon as there is one."
    },
    mixinStandardHelpOptions = true)
final class TrayLot implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private CollectionArgument collection = new CollectionArgument();

  @Option(names = "--by", paramLabel = "PERSON", description = "Who records it.")
  private @Nullable String person;

  @Parameters(index = "0", paramLabel = "LOT", description = "Name of the lot.")
  private String id = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PLACES",
      description = "go_out, held_back or never_out.")
  private Lot.@Nullable Places places;

  @Option(
      names = "--provenance",
      paramLabel = "TEXT",
      description = "Where it was found, as recorded.")
  private @Nullable String provenance;

  @Option(
      names = "--hazards",
      paramLabel = "TEXT",
      description = "Arsenic, mould, ...: shown before the first bone.")
  private @Nullable String hazards;

  @Option(names = "--remarks", paramLabel = "TEXT", description = "What else is known of the lot.")
  private @Nullable String remarks;

  TrayLot(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = collection.open(terminal)) {
      if (opened.lots().all().stream().noneMatch(l -> l.id().equals(id))) {
        throw new CannotDo(
            "No tray is of the lot \"" + id + "\". Nothing was changed. Look at tray list.");
      }
      Lot now = opened.lots().lot(id);
      Lot next = changed(now);
      if (!next.equals(now)) {
        record(opened, now, next);
      }
      show(opened, next);
    }
    return Terminal.FINE;
  }

  private Lot changed(Lot now) {
    Lot next = now;
    if (places != null) {
      next = next.withPlaces(places);
    }
    if (remarks != null) {
      next = next.withRemarks(remarks.strip());
    }
    return next.withNotes(
        new LotNotes(
            provenance == null ? now.notes().provenance() : provenance.strip(),
            hazards == null ? now.notes().hazards() : hazards.strip()));
  }

  private void record(Collection opened, Lot now, Lot next) {
    if (person == null || person.isBlank()) {
      throw new CannotDo("Nobody records it. Nothing was changed. Name a person by --by.");
    }
    PersonId by = new PersonId(person.strip());
    if (now.places() != next.places()) {
      Keepers.need(opened, by, "the places of " + id + " stay as they are");
    }
    opened.by(by).lots().save(next);
    terminal.note("Recorded. What was there before stands in the Day Book.");
  }

  private void show(Collection opened, Lot lot) {
    terminal.say("Lot " + id);
    terminal.say("  found: " + orNone(lot.notes().provenance()));
    terminal.say("  hazards: " + orNone(lot.notes().hazards()));
    terminal.say("  places: " + Words.of(lot.places()));
    if (!lot.remarks().isBlank()) {
      terminal.say("  remarks: " + lot.remarks());
    }
    for (Tray tray : opened.trays().all()) {
      if (tray.lot().equals(id)) {
        terminal.say("  tray " + tray.id().value() + ": " + tray(tray));
      }
    }
    LotProgress far = LotProgress.of(id, opened.trays(), terminal.clock().getZone());
    terminal.say("  " + Count.of(far.bones(), "bone") + ", " + far.called() + " called");
  }

  private static String tray(Tray tray) {
    List<String> parts = new ArrayList<>(List.of(Words.of(tray.state())));
    Optional.of(tray.own().provenance()).filter(t -> !t.isBlank()).ifPresent(parts::add);
    Optional.of(tray.own().hazards())
        .filter(t -> !t.isBlank())
        .ifPresent(t -> parts.add("hazards: " + t));
    return String.join("; ", parts);
  }

  private static String orNone(String text) {
    return text.isBlank() ? "not recorded" : text;
  }
}
