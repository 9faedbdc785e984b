package org.comparanda.storage;

import java.util.Iterator;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;

/** The comparative animals in the collection's file. */
record SqlReferenceAnimals(Database database, ShelfVersions versions, DayBookRows dayBook)
    implements ReferenceAnimals {
  @Override
  public Shelf shelf() {
    return database.read(ShelfRowReader::read);
  }

  @Override
  public long add(Iterator<Animal> animals, String origin, Progress progress) {
    return new SqlRegister(database, versions, dayBook)
        .addAll(new Cards(animals), origin, progress);
  }

  /** Animals of which nothing more is known than their table says. */
  private record Cards(Iterator<Animal> animals) implements Iterator<AnimalCard> {
    @Override
    public boolean hasNext() {
      return animals.hasNext();
    }

    @Override
    public AnimalCard next() {
      return AnimalCard.of(animals.next());
    }
  }
}
