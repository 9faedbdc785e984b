package org.comparanda.register;

import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;

/**
 * All that the register holds of one animal.
 *
 * @param animal the animal as fits see it
 * @param sourceName which other house or publication; empty for an own one
 * @param length how its body length came about
 * @param mass how its body mass came about
 * @param restriction the terms under which the house holds it
 * @param standing whether it stands on the shelf
 */
public record AnimalCard(
    Animal animal,
    String sourceName,
    BodyMeasure length,
    BodyMeasure mass,
    Restriction restriction,
    Standing standing) {
  /** An animal of which nothing more is known. */
  public static AnimalCard of(Animal animal) {
    return new AnimalCard(
        animal,
        "",
        BodyMeasure.notKnown(),
        BodyMeasure.notKnown(),
        Restriction.none(),
        Standing.kept());
  }

  /** The card of an own animal of which only the number is known. */
  public static AnimalCard blank(AnimalId number) {
    return of(Animal.blank(number));
  }

  public AnimalId id() {
    return animal.id();
  }

  public AnimalCard withAnimal(Animal other) {
    return new AnimalCard(other, sourceName, length, mass, restriction, standing);
  }

  public AnimalCard withSourceName(String other) {
    return new AnimalCard(animal, other, length, mass, restriction, standing);
  }

  public AnimalCard withLength(BodyMeasure other) {
    return new AnimalCard(animal, sourceName, other, mass, restriction, standing);
  }

  public AnimalCard withMass(BodyMeasure other) {
    return new AnimalCard(animal, sourceName, length, other, restriction, standing);
  }

  public AnimalCard withRestriction(Restriction other) {
    return new AnimalCard(animal, sourceName, length, mass, other, standing);
  }

  public AnimalCard withStanding(Standing other) {
    return new AnimalCard(animal, sourceName, length, mass, restriction, other);
  }
}
