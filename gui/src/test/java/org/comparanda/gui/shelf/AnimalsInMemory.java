package org.comparanda.gui.shelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.comparanda.reference.Animal;
import org.comparanda.reference.ImportedTable;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.reference.Shelf;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.SetDown;

/** A collection that lasts as long as the test. */
final class AnimalsInMemory implements ReferenceAnimals, ShelfRoom.Adding {
  private Shelf shelf = new Shelf(List.of());
  private Optional<SetDown> begun = Optional.empty();
  private Optional<ImportedTable> before = Optional.empty();

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

  @Override
  public long add(Path table, List<AnimalCard> cards, Progress progress) {
    List<Animal> animals = cards.stream().map(AnimalCard::animal).toList();
    return add(animals.iterator(), table.toString(), progress);
  }

  /** As if an import of every table had been interrupted. */
  void setDown(SetDown down) {
    begun = Optional.of(down);
  }

  @Override
  public Optional<ImportedTable> before(Path table) {
    return before;
  }

  /** As if every table had been imported before. */
  void imported(ImportedTable table) {
    before = Optional.of(table);
  }

  @Override
  public Optional<SetDown> begun(Path table) {
    return begun;
  }

  @Override
  public void forget(Path table) {
    begun = Optional.empty();
  }
}
