package org.comparanda.gui.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.comparanda.reference.Animal;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * Under which other names an animal is looked for: old ones of its taxon, the one in plain words.
 */
record AlsoCalled(TaxonTree tree) {
  boolean takes(ShelfFilter filter, Animal animal) {
    List<String> names = new ArrayList<>(plain(animal));
    old(animal).forEach(name -> names.add(name.value()));
    return filter.takes(animal, names);
  }

  /** What to say of animals that were found only under an old name; empty where there are none. */
  String said(ShelfFilter filter, List<Animal> found) {
    return found.stream()
        .filter(animal -> !filter.takes(animal, plain(animal)))
        .flatMap(animal -> old(animal).stream())
        .distinct()
        .filter(filter::means)
        .flatMap(name -> tree.standsUnder(name).stream())
        .collect(Collectors.joining(" "));
  }

  private List<TaxonName> old(Animal animal) {
    return animal.taxon().map(tree::synonymsOf).orElse(List.of());
  }

  private List<String> plain(Animal animal) {
    Optional<Taxon> known = animal.taxon().flatMap(tree::taxon);
    return known.map(taxon -> List.of(taxon.commonName())).orElse(List.of());
  }
}
