package org.comparanda.reference;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.comparanda.taxon.TaxonName;

/**
 * All comparative animals at one moment: an immutable snapshot, in catalogue order, each animal
 * once.
 *
 * <p>Errors: {@link IllegalArgumentException} if a catalogue number stands twice
 *
 * @param animals those that stand on it
 * @param secondNumbers catalogue numbers that turned out to be second ones, each with the number
 *     that it was merged into
 */
public record Shelf(List<Animal> animals, Map<AnimalId, AnimalId> secondNumbers) {
  public Shelf {
    animals = animals.stream().sorted(java.util.Comparator.comparing(Animal::id)).toList();
    secondNumbers = Map.copyOf(secondNumbers);
    Set<AnimalId> seen = new LinkedHashSet<>();
    for (Animal animal : animals) {
      if (!seen.add(animal.id())) {
        throw new IllegalArgumentException(animal.id() + " stands twice on the shelf.");
      }
    }
  }

  /** A shelf on which no number was ever merged into another. */
  public Shelf(List<Animal> animals) {
    this(animals, Map.of());
  }

  /** The number under which an animal stands now: of a second number the one it was merged into. */
  public AnimalId number(AnimalId given) {
    Set<AnimalId> seen = new LinkedHashSet<>();
    AnimalId now = given;
    while (seen.add(now)) {
      now = secondNumbers.getOrDefault(now, now);
    }
    return now;
  }

  /** The animal with that catalogue number. */
  public Optional<Animal> animal(AnimalId id) {
    return animals.stream().filter(a -> a.id().equals(id)).findFirst();
  }

  /** The taxa on the shelf, in alphabetical order. */
  public List<TaxonName> taxa() {
    return animals.stream().flatMap(a -> a.taxon().stream()).distinct().sorted().toList();
  }

  /** This shelf without one animal and all its bones, whichever of its numbers is given. */
  public Shelf without(AnimalId id) {
    AnimalId gone = number(id);
    return only(animal -> !animal.id().equals(gone));
  }

  /** This shelf with only some of its animals. */
  public Shelf only(Predicate<Animal> which) {
    return new Shelf(animals.stream().filter(which).toList(), secondNumbers);
  }
}
