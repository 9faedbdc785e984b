package org.comparanda.storage;

import java.util.HashSet;
import java.util.Iterator;
import java.util.Set;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.reference.Shelf;
import org.jdbi.v3.core.Handle;

/** The comparative animals in the collection's file. */
record SqlReferenceAnimals(Database database, ShelfVersions versions, DayBookRows dayBook)
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
    dayBook.wroteAll(h, Kept.ANIMAL, added, "");
    long version = versions.next(h, stored, origin);
    dayBook.wrote(h, Kept.SHELF, version, stored + " animals from \"" + origin + "\"");
    return stored;
  }
}
