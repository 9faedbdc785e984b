package org.comparanda.gui.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.bone.ElementKey;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.taxon.TaxonName;

/**
 * How many animals the shelf holds of each taxon and element that may feed a fit.
 *
 * @param elements the columns
 * @param rows one per taxon, in alphabetical order
 */
public record Stock(List<ElementKey> elements, List<Row> rows) {
  public Stock {
    elements = List.copyOf(elements);
    rows = List.copyOf(rows);
  }

  /** Animals per element, in the order of the columns. */
  public record Row(TaxonName taxon, List<Integer> animals) {
    public Row {
      animals = List.copyOf(animals);
    }
  }

  static Stock of(Shelf shelf) {
    Set<ElementKey> elements = new TreeSet<>();
    shelf.animals().forEach(a -> a.bones().forEach(b -> elements.add(b.element())));
    List<ElementKey> columns = List.copyOf(elements);
    List<Row> rows = new ArrayList<>();
    for (TaxonName taxon : shelf.taxa()) {
      rows.add(
          new Row(taxon, columns.stream().map(element -> count(shelf, taxon, element)).toList()));
    }
    return new Stock(columns, rows);
  }

  private static int count(Shelf shelf, TaxonName taxon, ElementKey element) {
    return (int)
        shelf.animals().stream()
            .filter(a -> a.taxon().filter(taxon::equals).isPresent() && a.feedsFits())
            .filter(a -> holds(a, element))
            .count();
  }

  private static boolean holds(Animal animal, ElementKey element) {
    return animal.bones().stream().anyMatch(b -> b.element().equals(element) && b.feedsFits());
  }
}
