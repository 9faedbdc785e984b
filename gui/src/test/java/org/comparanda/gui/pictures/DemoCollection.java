package org.comparanda.gui.pictures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.comparanda.gui.app.DemoRoom;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.reference.Animal;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;

/** The demo collection in a folder of its own. */
final class DemoCollection {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

  private DemoCollection() {}

  static Collection make(ReferenceTables tables) throws IOException {
    return DemoRoom.open(Files.createTempDirectory("pictures"), tables, CLOCK);
  }

  /** Makes each once, when it is first asked for. */
  static Function<Pose.Shelf, Collection> all(ReferenceTables tables) {
    Map<Pose.Shelf, Collection> made = new EnumMap<>(Pose.Shelf.class);
    return new Function<>() {
      @Override
      public Collection apply(Pose.Shelf shelf) {
        try {
          if (!made.containsKey(shelf)) {
            made.put(
                shelf,
                switch (shelf) {
                  case DEMO -> make(tables);
                  case EMPTY -> empty();
                  case THIN -> thin(apply(Pose.Shelf.DEMO));
                  case MANY -> many(apply(Pose.Shelf.DEMO));
                  case LOOKED -> LookedRoom.make(tables);
                });
          }
          return made.get(shelf);
        } catch (IOException unwritable) {
          throw new UncheckedIOException(unwritable);
        }
      }
    };
  }

  /** A collection as the first start makes it. */
  static Collection empty() throws IOException {
    Path folder = Files.createTempDirectory("pictures-empty");
    Collection empty = Collection.create(folder.resolve("empty" + Collection.ENDING), CLOCK);
    empty.people().save(new Person(new PersonId("ann"), "Invented Ann"));
    return empty;
  }

  /** The same trays beside a shelf that holds only one animal in twelve. */
  static Collection thin(Collection demo) throws IOException {
    List<Animal> animals = demo.animals().shelf().animals();
    return beside(
        demo,
        IntStream.range(0, animals.size())
            .filter(i -> i % 12 == 0)
            .mapToObj(animals::get)
            .toList());
  }

  /** The same trays beside a shelf of many taxa. */
  private static Collection many(Collection demo) throws IOException {
    return beside(demo, ManyTaxa.after("Ovis aries", demo.animals().shelf().animals()));
  }

  private static Collection beside(Collection demo, List<Animal> animals) throws IOException {
    Path folder = Files.createTempDirectory("pictures-other");
    Collection other = Collection.create(folder.resolve("other" + Collection.ENDING), CLOCK);
    demo.people().all().forEach(other.people()::save);
    other.animals().add(animals);
    for (Tray tray : demo.trays().all()) {
      other.trays().save(tray);
      for (TrayBone bone : demo.trays().bonesOf(tray.id())) {
        other.trays().save(bone);
        other.readings().append(demo.readings().of(bone.id()));
      }
    }
    return other;
  }
}
