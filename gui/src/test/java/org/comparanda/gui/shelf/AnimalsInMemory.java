package org.comparanda.gui.shelf;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;

/** A collection that lasts as long as the test. */
final class AnimalsInMemory implements ReferenceAnimals {
  private Shelf shelf = new Shelf(List.of());

  @Override
  public Shelf shelf() {
    return shelf;
  }

  @Override
  public long add(Iterator<Animal> animals, String origin, Progress progress) {
    if (!progress.goOn(0)) {
      return 0;
    }
    List<Animal> all = new ArrayList<>(shelf.animals());
    long before = all.size();
    animals.forEachRemaining(all::add);
    shelf = new Shelf(all);
    return all.size() - before;
  }

  long addCards(Iterator<AnimalCard> cards, String origin, Progress progress) {
    List<Animal> animals = new ArrayList<>();
    cards.forEachRemaining(card -> animals.add(card.animal()));
    return add(animals.iterator(), origin, progress);
  }
}
