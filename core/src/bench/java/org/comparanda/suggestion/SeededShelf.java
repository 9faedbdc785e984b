package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;

/**
 * Invented animals by a seed: one element, six measurements in mm, six in a hundred missing, seven
 * of ten animals with both sides, one taxon of three animals, the others of very different numbers.
 */
final class SeededShelf {
  static final ElementKey ELEMENT = new ElementKey("humerus");
  static final List<MeasurementCode> CODES =
      List.of("GL", "GLC", "SD", "Bd", "BT", "HTC").stream().map(MeasurementCode::new).toList();

  private final SplittableRandom random = new SplittableRandom(20417);
  private final List<List<Double>> means = new ArrayList<>();

  private SeededShelf(int taxa) {
    for (int t = 0; t < taxa; t++) {
      double size = Math.log(20) + 1.2 * random.nextDouble();
      List<Double> mean = new ArrayList<>();
      for (int j = 0; j < CODES.size(); j++) {
        mean.add(size + Math.log(j + 1.0) + 0.08 * normal());
      }
      means.add(mean);
    }
  }

  static Shelf of(int animals, int taxa) {
    SeededShelf seeded = new SeededShelf(taxa);
    List<Animal> shelf = new ArrayList<>();
    for (int i = 0; i < animals; i++) {
      shelf.add(seeded.animal(i, i < 3 ? 0 : 1 + seeded.common(taxa - 1)));
    }
    return new Shelf(shelf);
  }

  private int common(int taxa) {
    return (int) (taxa * random.nextDouble() * random.nextDouble());
  }

  private double normal() {
    return Math.sqrt(-2 * Math.log(1 - random.nextDouble()))
        * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private Animal animal(int number, int taxon) {
    double size = 0.06 * normal();
    List<Double> own = means.get(taxon).stream().map(m -> m + size + 0.03 * normal()).toList();
    List<Side> sides = random.nextInt(10) < 7 ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.LEFT);
    return new Animal(
        new AnimalId("%05d".formatted(number)),
        Optional.of(new TaxonName("Taxon %02d".formatted(taxon))),
        Source.OWN_DRAWER,
        Optional.of("A"),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "",
        sides.stream().map(side -> bone(side, own)).toList());
  }

  private ShelfBone bone(Side side, List<Double> logs) {
    Map<MeasurementCode, Double> values = new TreeMap<>();
    for (int j = 0; j < CODES.size(); j++) {
      if (random.nextInt(100) >= 6) {
        values.put(CODES.get(j), Math.exp(logs.get(j) + 0.01 * normal()));
      }
    }
    return new ShelfBone(ELEMENT, side, Portion.WHOLE, Set.of(), values);
  }
}
