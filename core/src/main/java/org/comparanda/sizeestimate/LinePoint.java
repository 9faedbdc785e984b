package org.comparanda.sizeestimate;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;

/**
 * One point of a size line: an animal, or on a tree the mean of a taxon.
 *
 * @param animals the animal; all animals of the taxon where the point is a taxon's mean
 * @param taxon empty for a table without taxa
 * @param drawer where the animal's bones lie; empty for a mean or another house's animal
 * @param x predictors in the order asked, own units
 * @param y the quantity asked for, own unit
 */
public record LinePoint(
    List<AnimalId> animals,
    Optional<TaxonName> taxon,
    Optional<String> drawer,
    List<Double> x,
    double y) {
  public LinePoint {
    animals = List.copyOf(animals);
    x = List.copyOf(x);
  }

  /** Catalogue number, or the taxon and how many animals its mean stands for. */
  public String label() {
    if (animals.size() == 1) {
      return animals.get(0).value();
    }
    return taxon.map(TaxonName::value).orElse("")
        + " ("
        + animals.stream().map(AnimalId::value).collect(Collectors.joining(", "))
        + ")";
  }
}
