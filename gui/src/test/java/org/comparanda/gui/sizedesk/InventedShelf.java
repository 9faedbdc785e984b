package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
 * Invented jaws. Broad snouts: body length is 8 times the jaw, give or take a tenth. Slender
 * snouts: 5 times.
 */
final class InventedShelf {
  static final TaxonName BROAD = new TaxonName("Crocodylus palustris");
  static final TaxonName SLENDER = new TaxonName("Gavialis gangeticus");

  private InventedShelf() {}

  static Shelf shelf() {
    List<Animal> animals = new ArrayList<>();
    List<Double> wobble = List.of(0.95, 1.04, 0.98, 1.06, 0.93, 1.03, 1.01, 0.97);
    for (int i = 0; i < wobble.size(); i++) {
      double jaw = 250 + 40 * i;
      animals.add(animal("B-" + i, BROAD, jaw, 8 * jaw * wobble.get(i)));
    }
    for (int i = 0; i < 4; i++) {
      double jaw = 450 + 60 * i;
      animals.add(animal("S-" + i, SLENDER, jaw, 5 * jaw * wobble.get(i)));
    }
    return new Shelf(animals);
  }

  /** The same animals, each with a femur a third as long as its jaw, give or take a twentieth. */
  static Shelf withFemora() {
    List<Double> wobble =
        List.of(1.03, 0.99, 1.02, 0.98, 1.01, 0.97, 1.0, 1.04, 0.96, 1.02, 0.99, 1.01);
    List<Animal> animals = new ArrayList<>();
    List<Animal> jaws = shelf().animals();
    for (int i = 0; i < jaws.size(); i++) {
      Animal a = jaws.get(i);
      ShelfBone jaw = a.bones().get(0);
      double jawMm = jaw.values().values().iterator().next();
      ShelfBone femur =
          new ShelfBone(
              new ElementKey("femur"),
              Side.LEFT,
              Portion.WHOLE,
              Set.of(),
              Map.of(new MeasurementCode("GL"), jawMm / 3 * wobble.get(i)));
      animals.add(
          new Animal(
              a.id(),
              a.taxon(),
              a.source(),
              a.drawer(),
              a.sex(),
              a.ageClass(),
              a.origin(),
              a.bodyLengthMm(),
              a.bodyMassG(),
              a.flags(),
              a.remarks(),
              List.of(jaw, femur)));
    }
    return new Shelf(animals);
  }

  private static Animal animal(String id, TaxonName taxon, double jawMm, double bodyMm) {
    ShelfBone jaw =
        new ShelfBone(
            new ElementKey("mandible"),
            Side.LEFT,
            Portion.WHOLE,
            Set.of(),
            Map.of(new MeasurementCode("ML"), jawMm));
    return new Animal(
        new AnimalId(id),
        Optional.of(taxon),
        Source.OWN_DRAWER,
        Optional.of("K 1"),
        "",
        "",
        "wild",
        Optional.of(bodyMm),
        Optional.empty(),
        Set.of(),
        "invented",
        List.of(jaw));
  }
}
