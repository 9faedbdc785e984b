package org.comparanda.gui.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.comparanda.taxon.TaxonName;

/** Forty invented taxa of much the same size, so that a bone leaves nearly all of them in play. */
final class ManyTaxa {
  private static final List<String> GENERA =
      List.of("Harrowmeria", "Fenwoldia", "Quarrantella", "Tarnocervus", "Brackenobos");
  private static final List<String> SPECIES =
      List.of(
          "prima",
          "secunda",
          "minor",
          "maior",
          "palustris",
          "longissimicornis",
          "subterranea",
          "incerta");
  private static final int ANIMALS = 5;

  private ManyTaxa() {}

  /** Five animals of each, after the pattern of one taxon. */
  static List<Animal> after(String pattern, List<Animal> shelf) {
    List<Animal> patterns =
        shelf.stream().filter(a -> a.taxon().equals(Optional.of(new TaxonName(pattern)))).toList();
    SplittableRandom random = new SplittableRandom(20261126);
    List<Animal> many = new ArrayList<>();
    for (String genus : GENERA) {
      for (String species : SPECIES) {
        double taxon = 0.04 * random.nextGaussian();
        for (int i = 0; i < ANIMALS; i++) {
          Animal one = patterns.get(many.size() % patterns.size());
          many.add(like(one, genus + " " + species, "IN-" + (many.size() + 1), taxon, random));
        }
      }
    }
    return many;
  }

  private static Animal like(
      Animal a, String taxon, String id, double size, SplittableRandom random) {
    double own = size + 0.04 * random.nextGaussian();
    return new Animal(
        new AnimalId(id),
        Optional.of(new TaxonName(taxon)),
        a.source(),
        a.drawer(),
        a.sex(),
        a.ageClass(),
        a.origin(),
        a.bodyLengthMm(),
        a.bodyMassG(),
        a.flags(),
        a.remarks(),
        a.bones().stream().map(b -> like(b, own, random)).toList());
  }

  private static ShelfBone like(ShelfBone b, double size, SplittableRandom random) {
    Map<MeasurementCode, Double> values = new TreeMap<>();
    b.values()
        .forEach(
            (code, mm) -> values.put(code, mm * Math.exp(size + 0.03 * random.nextGaussian())));
    return new ShelfBone(b.element(), b.side(), b.portion(), b.flags(), values);
  }
}
