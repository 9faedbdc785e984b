package org.comparanda.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.bone.BoneAge;
import org.comparanda.exchange.table.BoneTable;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableOutcome;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.People;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.measurement.ReadingLog;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Progress;
import org.comparanda.reference.Shelf;
import org.comparanda.register.TableIntake;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.Lot;
import org.comparanda.tray.LotNotes;
import org.comparanda.tray.Lots;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.comparanda.tray.Trays;

/**
 * The Harrowmere Bone Room with its simulated shelf and trays, read by the ordinary import.
 *
 * @param shelf 168 simulated animals
 * @param trays four trays of simulated bones
 */
public record Harrowmere(Shelf shelf, List<DemoBones> trays) {
  /** Name of the file that holds it. */
  public static final String FILE = "harrowmere.comparanda";

  private static final PersonId PERSON = new PersonId("demo");
  private static final String ORIGIN = "simulated";

  public Harrowmere {
    trays = List.copyOf(trays);
  }

  /** One tray with its bones, values in mm. */
  public record DemoBones(Tray tray, List<BoneInHand> bones) {
    public DemoBones {
      bones = List.copyOf(bones);
    }
  }

  /** Reads the files packed with the program. */
  public static Harrowmere read(ReferenceTables tables) {
    TableReader reader =
        TableReader.of(
            tables.protocol(),
            tables.taxa(),
            TableOptions.withDefaults()
                .withUnitDoubt(TableOptions.UnitDoubt.TAKE_AS_IS)); // the messy tray is messy
    try {
      Path folder = Files.createTempDirectory("harrowmere");
      try {
        Shelf shelf = content(reader.shelf(unpacked(folder, "shelf.csv"))).content();
        List<DemoBones> trays = new ArrayList<>();
        for (String name : DemoTray.TRAYS) {
          Path table = unpacked(folder, "tray-" + name + ".csv");
          BoneTable bones = content(reader.bones(shelf, table)).content();
          trays.add(new DemoBones(tray(name), bones.toList()));
          Files.delete(table);
        }
        return new Harrowmere(shelf, trays);
      } finally {
        Files.deleteIfExists(folder.resolve("shelf.csv"));
        Files.deleteIfExists(folder);
      }
    } catch (IOException problem) {
      throw new UncheckedIOException("The demo's tables could not be unpacked.", problem);
    }
  }

  private static Path unpacked(Path folder, String file) throws IOException {
    return Files.writeString(folder.resolve(file), DemoFiles.shipped(file));
  }

  private static <T> TableRead<T> content(TableOutcome<T> outcome) {
    return outcome.fold(
        read -> read,
        report -> {
          throw new IllegalStateException(String.join("\n", report.lines()));
        });
  }

  private static Tray tray(String name) {
    boolean fossil = name.equals("fossil");
    return new Tray(
            new TrayId("harrowmere-" + name),
            "Harrowmere " + name,
            Character.toUpperCase(name.charAt(0)) + name.substring(1) + " tray (simulated)",
            fossil ? BoneAge.FOSSIL : BoneAge.RECENT,
            "",
            "",
            Tray.State.WAITING)
        .withOfLot(new LotNotes("Harrowmere Bone Room: invented, all values simulated", ""));
  }

  /** Puts shelf, trays and readings into an empty collection. */
  public void fill(
      TableIntake intake, Trays drawers, Lots lots, ReadingLog log, People people, Instant at) {
    people.save(new Person(PERSON, "Demo (simulated)"));
    intake.bringIn(
        "",
        ORIGIN,
        DemoPermits.cards(shelf.animals(), at.atZone(ZoneOffset.UTC).toLocalDate()),
        Progress.toTheEnd());
    for (DemoBones each : trays) {
      drawers.save(each.tray());
      lots.save(Lot.named(each.tray().lot()).withNotes(each.tray().ofLot()));
      for (BoneInHand bone : each.bones()) {
        drawers.save(onTray(each.tray(), bone));
        log.append(readings(bone, at));
      }
    }
  }

  private static TrayBone onTray(Tray tray, BoneInHand bone) {
    return new TrayBone(
        new BoneId(bone.id()),
        tray.id(),
        bone.animal(),
        bone.element(),
        bone.side(),
        bone.portion(),
        bone.state(),
        TrayBone.Standing.OPEN,
        ORIGIN);
  }

  private static List<Reading> readings(BoneInHand bone, Instant at) {
    BoneId id = new BoneId(bone.id());
    return bone.values().entrySet().stream()
        .map(
            taken ->
                Reading.ofTable(
                    id, bone.element(), taken.getKey(), taken.getValue(), PERSON, at, ""))
        .toList();
  }
}
