package org.comparanda.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.comparanda.bone.BoneAge;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.reference.BoneInHand;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.Lot;
import org.comparanda.tray.LotNotes;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts the measured bones of a table on a tray; each value becomes a reading of a person. */
@Command(
    name = "add",
    description = {
      "Put the bones of a table on a tray, which is made where there is none. Each value, if any,",
      "becomes a reading by the person named. All of the table, or nothing."
    },
    mixinStandardHelpOptions = true)
final class TrayAdd implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "TABLE", description = "CSV, one row per bone, with a column bone.")
  private Path table = Path.of("");

  @Option(
      names = "--collection",
      required = true,
      paramLabel = "FILE",
      description = "The collection, ending in .comparanda.")
  private Path collection = Path.of("");

  @Option(names = "--tray", required = true, paramLabel = "ID", description = "Key of the tray.")
  private String tray = "";

  @Option(names = "--by", required = true, paramLabel = "PERSON", description = "Who measured.")
  private String person = "";

  @Option(names = "--lot", paramLabel = "LOT", description = "Lot of a new tray; else its key.")
  private @Nullable String lot;

  @Option(
      names = "--place",
      paramLabel = "TEXT",
      description = {
        "Place as recorded, of a new lot; of a new tray alone where its lot is there already."
      })
  private String place = "";

  @Option(
      names = "--hazards",
      paramLabel = "TEXT",
      description = "The same for hazards, shown before the first bone.")
  private String hazards = "";

  @Option(
      names = "--age",
      paramLabel = "AGE",
      description = "recent, archaeological, fossil or not_known.")
  private BoneAge age = BoneAge.NOT_KNOWN;

  @Mixin private TableArguments tables = new TableArguments();

  TrayAdd(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Collection opened = Collection.open(collection, terminal.clock())) {
      ReferenceTables words = HouseTables.of(opened);
      opened.caution().ifPresent(terminal::note);
      List<BoneInHand> bones =
          TableReader.of(words.protocol(), words.taxa(), tables.options())
              .heap(opened.animals().shelf(), table)
              .fold(
                  read -> {
                    tables.everyMappingFound(List.of(read.facts()));
                    terminal.note(read.facts().sentence());
                    return read.content().toList();
                  },
                  report -> {
                    throw new CannotDo(report.lines());
                  });
      everyNumberIsNew(opened, bones);
      Tray onto = tray(opened);
      HazardsLine.say(terminal, onto);
      Instant now = terminal.clock().instant();
      List<Reading> readings = bones.stream().flatMap(b -> readings(b, now).stream()).toList();
      opened
          .by(new PersonId(person))
          .trays()
          .put(onto, bones.stream().map(b -> bone(onto, b)).toList(), readings);
      terminal.say(
          "Put "
              + Count.of(bones.size(), "bone")
              + " with "
              + Count.of(readings.size(), "reading")
              + " on "
              + onto.name()
              + ".");
    }
    return Terminal.FINE;
  }

  private void everyNumberIsNew(Collection opened, List<BoneInHand> bones) {
    Set<String> seen = new HashSet<>();
    for (BoneInHand bone : bones) {
      boolean twice = !seen.add(bone.id());
      if (twice || opened.trays().bone(new BoneId(bone.id())).isPresent()) {
        throw new CannotDo(
            "Bone \""
                + bone.id()
                + "\" of "
                + table
                + (twice ? " stands twice in the table" : " is on a tray already")
                + ". Nothing was stored. Give every bone a number of its own.");
      }
    }
  }

  private Tray tray(Collection opened) {
    Optional<Tray> there =
        opened.trays().all().stream().filter(t -> t.id().value().equals(tray)).findFirst();
    if (there.isPresent()) {
      return there.get();
    }
    String its = lot == null ? tray : lot;
    LotNotes noted = new LotNotes(place.strip(), hazards.strip());
    boolean first = opened.trays().all().stream().noneMatch(t -> t.lot().equals(its));
    Tray made = new Tray(new TrayId(tray), its, tray, age, "", "", Tray.State.WAITING);
    if (!first) {
      return made.withOwn(noted).withOfLot(opened.lots().lot(its).notes());
    }
    if (!noted.equals(LotNotes.none())) {
      opened.by(new PersonId(person)).lots().save(Lot.named(its).withNotes(noted));
    }
    return made.withOfLot(noted);
  }

  private TrayBone bone(Tray onto, BoneInHand bone) {
    return new TrayBone(
        new BoneId(bone.id()),
        onto.id(),
        bone.animal(),
        bone.element(),
        bone.side(),
        bone.portion(),
        bone.state(),
        TrayBone.Standing.OPEN,
        "");
  }

  private List<Reading> readings(BoneInHand bone, Instant now) {
    BoneId id = new BoneId(bone.id());
    return bone.values().entrySet().stream()
        .map(
            taken ->
                Reading.ofTable(
                    id,
                    bone.element(),
                    taken.getKey(),
                    taken.getValue(),
                    new PersonId(person),
                    now,
                    "from " + table.getFileName()))
        .toList();
  }
}
