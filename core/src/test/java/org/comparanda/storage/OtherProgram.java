package org.comparanda.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;

/** A second JVM that works on a collection, to be killed or watched. */
final class OtherProgram {
  private OtherProgram() {}

  /** Starts {@link #main} in a JVM of its own; {@code before} goes in front of the command. */
  static Process start(List<String> before, List<String> jvm, String... arguments)
      throws IOException {
    List<String> command = new ArrayList<>(before);
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(jvm);
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(OtherProgram.class.getName());
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  /** {@code append FILE ROUND COUNT}, {@code number FILE TRAY} or {@code add FILE ANIMALS}. */
  public static void main(String[] arguments) {
    Path file = Path.of(arguments[1]);
    if (arguments[0].equals("append")) {
      append(file, arguments[2], Integer.parseInt(arguments[3]));
    } else if (arguments[0].equals("number")) {
      number(file, new TrayId(arguments[2]));
    } else {
      add(file, Integer.parseInt(arguments[2]));
    }
  }

  /** Appends readings and says so after each; the point at the end marks a whole line. */
  private static void append(Path file, String round, int count) {
    try (Collection collection = Collection.open(file, Clock.systemUTC())) {
      for (int i = 0; i < count; i++) {
        collection.readings().append(CollectionFileTest.reading(round + ":" + i));
        System.out.println("accepted " + round + ":" + i + " .");
      }
    }
  }

  /** Puts bones on a tray under its next numbers until it is killed, and says each number. */
  private static void number(Path file, TrayId id) {
    try (Collection collection = Collection.open(file, Clock.systemUTC())) {
      Tray tray =
          collection.trays().all().stream()
              .filter(t -> t.id().equals(id))
              .findFirst()
              .orElseThrow();
      ElementKey femur = new ElementKey("femur");
      while (true) {
        TrayBone put =
            collection
                .numbering()
                .put(tray, given -> TrayBone.fresh(given, id, femur, Side.LEFT, Portion.WHOLE));
        System.out.println("number " + put.id() + " .");
      }
    }
  }

  private static void add(Path file, int animals) {
    try (Collection collection = Collection.create(file, Clock.systemUTC())) {
      Iterator<Animal> invented =
          IntStream.range(0, animals).mapToObj(OtherProgram::animal).iterator();
      System.out.println(collection.animals().add(invented, "invented", Progress.toTheEnd()));
    }
  }

  private static Animal animal(int number) {
    return new Animal(
        new AnimalId("A-" + number),
        Optional.of(new TaxonName("Taxon " + number % 40)),
        Source.PUBLICATION,
        Optional.empty(),
        "",
        "adult",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "invented",
        List.of(
            new ShelfBone(
                new ElementKey("humerus"),
                Side.LEFT,
                Portion.WHOLE,
                Set.of(),
                Map.of(
                    new MeasurementCode("GL"), 100 + number * 1e-3,
                    new MeasurementCode("Bd"), 30 + number * 1e-4,
                    new MeasurementCode("BT"), 25 + number * 1e-4))));
  }
}
