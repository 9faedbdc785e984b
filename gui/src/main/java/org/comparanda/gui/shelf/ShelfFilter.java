package org.comparanda.gui.shelf;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
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

  /**
   * Whether it takes an animal.
   *
   * @param alsoCalled other names of its taxon
   */
  boolean takes(Animal animal, List<String> alsoCalled) {
    String record = record(animal, alsoCalled);
    return (taxon.isEmpty() || taxon.equals(animal.taxon()))
        && (element.isEmpty()
            || animal.bones().stream().anyMatch(b -> b.element().equals(element.get())))
        && words().allMatch(record::contains);
  }

  /** Whether a name is among what was typed: one of its words stands in it. */
  boolean means(TaxonName name) {
    return words().anyMatch(word -> !word.isEmpty() && lower(name.value()).contains(word));
  }

  private Stream<String> words() {
    return lower(text)
        .lines()
        .flatMap(line -> java.util.Arrays.stream(line.strip().split("\\s+", -1)));
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  private static String record(Animal a, List<String> alsoCalled) {
    return lower(
        String.join(
            " ",
            a.id().value(),
            a.taxon().map(TaxonName::value).orElse(""),
            String.join(" ", alsoCalled),
            a.drawer().orElse(""),
            a.sex(),
            a.ageClass(),
            a.origin(),
            a.remarks()));
  }
}
