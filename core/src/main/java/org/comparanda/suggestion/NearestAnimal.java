package org.comparanda.suggestion;

import java.util.Optional;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;

/** A comparative animal to open the drawer of. The distance is a Mahalanobis distance. */
public record NearestAnimal(
    AnimalId animal, TaxonName taxon, Optional<String> drawer, double distance) {}
