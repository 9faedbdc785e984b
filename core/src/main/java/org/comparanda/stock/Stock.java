package org.comparanda.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.bone.ElementKey;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.taxon.TaxonName;

/**
 * How many animals the shelf holds of each taxon and element, zeros included, by taxon and element.
 * A bone that a flag keeps out of fits does not count.
 */
public record Stock(List<Cell> cells) {
  public Stock {
    cells = List.copyOf(cells);
  }

  /** Animals of one taxon with at least one measured bone of the element. */
  public record Cell(TaxonName taxon, ElementKey element, int animals) {}

  public static Stock of(Shelf shelf) {
    List<Animal> animals = shelf.animals().stream().filter(Animal::feedsFits).toList();
    Set<ElementKey> elements = new TreeSet<>();
    animals.forEach(a -> a.bones().forEach(b -> elements.add(b.element())));
    List<Cell> cells = new ArrayList<>();
    for (TaxonName taxon : shelf.taxa()) {
      for (ElementKey element : elements) {
        cells.add(new Cell(taxon, element, count(animals, taxon, element)));
      }
    }
    return new Stock(cells);
  }

  /** The elements, in alphabetical order. */
  public List<ElementKey> elements() {
    return cells.stream().map(Cell::element).distinct().sorted().toList();
  }

  /** The taxa, in alphabetical order. */
  public List<TaxonName> taxa() {
    return cells.stream().map(Cell::taxon).distinct().sorted().toList();
  }

  private static int count(List<Animal> animals, TaxonName taxon, ElementKey element) {
    return (int)
        animals.stream()
            .filter(a -> a.taxon().filter(taxon::equals).isPresent())
            .filter(a -> a.bones().stream().anyMatch(b -> counts(b, element)))
            .count();
  }

  static boolean counts(ShelfBone bone, ElementKey element) {
    return bone.element().equals(element) && bone.feedsFits() && !bone.values().isEmpty();
  }
}
