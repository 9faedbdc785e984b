package org.comparanda.gui.shelf;

import java.util.Locale;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.reference.Animal;
import org.comparanda.taxon.TaxonName;

/**
 * Which animals are listed: those that fit all three.
 *
 * @param text words that must all stand somewhere in the animal's record; case does not matter
 * @param taxon only this taxon
 * @param element only animals with this element
 */
public record ShelfFilter(String text, Optional<TaxonName> taxon, Optional<ElementKey> element) {
  /** Everything. */
  public static ShelfFilter none() {
    return new ShelfFilter("", Optional.empty(), Optional.empty());
  }

  ShelfFilter withText(String other) {
    return new ShelfFilter(other, taxon, element);
  }

  ShelfFilter withTaxon(Optional<TaxonName> other) {
    return new ShelfFilter(text, other, element);
  }

  ShelfFilter withElement(Optional<ElementKey> other) {
    return new ShelfFilter(text, taxon, other);
  }

  boolean takes(Animal animal) {
    return (taxon.isEmpty() || taxon.equals(animal.taxon()))
        && (element.isEmpty()
            || animal.bones().stream().anyMatch(b -> b.element().equals(element.get())))
        && text.toLowerCase(Locale.ROOT)
            .lines()
            .flatMap(line -> java.util.Arrays.stream(line.strip().split("\\s+", -1)))
            .allMatch(record(animal)::contains);
  }

  private static String record(Animal a) {
    return String.join(
            " ",
            a.id().value(),
            a.taxon().map(TaxonName::value).orElse(""),
            a.drawer().orElse(""),
            a.sex(),
            a.ageClass(),
            a.origin(),
            a.remarks())
        .toLowerCase(Locale.ROOT);
  }
}
