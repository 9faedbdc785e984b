package org.comparanda.reference;

import java.util.List;

/** Repository of the comparative animals. */
public interface ReferenceAnimals {
  /** All animals at this moment. */
  Shelf shelf();

  /** Adds all of them or none: an existing catalogue number is an error. */
  void add(List<Animal> animals);
}
