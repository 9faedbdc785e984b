package org.comparanda.reference;

import java.util.Iterator;
import java.util.List;

/** Repository of the comparative animals. */
public interface ReferenceAnimals {
  /** All animals at this moment. */
  Shelf shelf();

  /**
   * Adds all of them or none, taking them one after the other, so that any number fits into memory.
   *
   * <p>Errors: {@link IllegalArgumentException} naming the catalogue number, if it is on the shelf
   * already or comes twice; nothing is then stored.
   *
   * @param origin where their values come from (a file, a publication), kept with each value
   * @param progress asked every thousand animals and before the end
   * @return how many were stored; 0 when progress stopped it
   */
  long add(Iterator<Animal> animals, String origin, Progress progress);

  /** Adds all of them or none; origin not known. Errors as above. */
  default void add(List<Animal> animals) {
    add(animals.iterator(), "", Progress.toTheEnd());
  }
}
