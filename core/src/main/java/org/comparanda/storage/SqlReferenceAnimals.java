package org.comparanda.storage;

import java.time.Clock;
import java.util.HashSet;
import java.util.Iterator;
import java.util.Set;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.reference.Shelf;
import org.jdbi.v3.core.Handle;

/** The comparative animals in the collection's file. */
record SqlReferenceAnimals(Database database, Clock clock, DayBookRows dayBook)
    implements ReferenceAnimals {
  private static final int ASK_EVERY = 1_000;

  @Override
  public Shelf shelf() {
    return database.read(ShelfRowReader::read);
  }

  @Override
  public long add(Iterator<Animal> animals, String origin, Progress progress) {
    return database.write(
        h -> {
          long stored = addAll(h, animals, origin, progress);
          if (stored == 0) {
            h.rollback();
          }
          return stored;
        });
  }

  private long addAll(Handle h, Iterator<Animal> animals, String origin, Progress progress) {
    long stored = 0;
    Set<String> added = new HashSet<>();
    try (ShelfRowWriter rows = new ShelfRowWriter(h, origin)) {
      while (animals.hasNext()) {
        if (stored % ASK_EVERY == 0 && !progress.goOn(stored)) {
          return 0;
        }
        Animal animal = animals.next();
        rows.add(animal);
        added.add(animal.id().value());
        stored++;
      }
      rows.writeRest();
    }
    if (stored == 0 || !progress.goOn(stored)) {
      return 0;
    }
    h.createUpdate(
            "insert into shelf_change (version, at, animals, origin)"
                + " values (:version, :at, :animals, :origin)")
        .bind("version", version(h) + 1)
        .bind("at", clock.instant().toString())
        .bind("animals", stored)
        .bind("origin", origin)
        .execute();
    dayBook.wroteAll(h, Kept.ANIMAL, added, "");
    dayBook.wrote(h, Kept.SHELF, version(h), stored + " animals from \"" + origin + "\"");
    return stored;
  }

  static long version(Handle h) {
    return h.createQuery("select coalesce(max(version), 0) from shelf_change")
        .mapTo(Long.class)
        .one();
  }
}
