package org.comparanda.reference;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.taxon.TaxonName;

/**
 * All comparative animals at one moment: an immutable snapshot, in catalogue order, each animal
 * once.
 *
 * <p>Errors: {@link IllegalArgumentException} if a catalogue number stands twice
 */
public record Shelf(List<Animal> animals) {
  public Shelf {
    animals = animals.stream().sorted(java.util.Comparator.comparing(Animal::id)).toList();
    Set<AnimalId> seen = new LinkedHashSet<>();
    for (Animal animal : animals) {
      if (!seen.add(animal.id())) {
        throw new IllegalArgumentException(animal.id() + " stands twice on the shelf.");
      }
    }
  }

  /** The animal with that catalogue number. */
  public Optional<Animal> animal(AnimalId id) {
    return animals.stream().filter(a -> a.id().equals(id)).findFirst();
  }

  /** The taxa on the shelf, in alphabetical order. */
  public List<TaxonName> taxa() {
    return animals.stream().flatMap(a -> a.taxon().stream()).distinct().sorted().toList();
  }

  /** This shelf without one animal and all its bones. */
  public Shelf without(AnimalId id) {
    return new Shelf(animals.stream().filter(a -> !a.id().equals(id)).toList());
  }
}
