package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.outside.OutsideTable;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;

/** Shelves for tests: from an outside table, or animal by animal. */
final class TableShelf {
  static final Protocol NO_PROTOCOL = new Protocol(List.of(), List.of(), List.of());

  private TableShelf() {}

  /** One animal a row, the columns as measurements of the unnamed element. */
  static Shelf of(OutsideTable table, Optional<String> taxonColumn, String... columns) {
    List<Animal> animals = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      OutsideTable.Row row = table.rows().get(i);
      Map<MeasurementCode, Double> values = new HashMap<>();
      for (String column : columns) {
        if (row.has(column)) {
          values.put(new MeasurementCode(column), row.number(column));
        }
      }
      animals.add(
          animal(
              String.format("r%04d", i),
              taxonColumn.map(c -> row.text(c)).orElse(""),
              bone(ElementKey.UNNAMED, Side.NOT_KNOWN, values)));
    }
    return new Shelf(animals);
  }

  static Animal animal(String id, String taxon, ShelfBone... bones) {
    return new Animal(
        new AnimalId(id),
        taxon.isEmpty() ? Optional.empty() : Optional.of(new TaxonName(taxon)),
        Source.OWN_DRAWER,
        Optional.of("D1"),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "",
        List.of(bones));
  }

  static Animal withMass(Animal a, double massG, String origin, Set<Flag> flags) {
    return new Animal(
        a.id(),
        a.taxon(),
        a.source(),
        a.drawer(),
        a.sex(),
        a.ageClass(),
        origin,
        a.bodyLengthMm(),
        Optional.of(massG),
        flags,
        a.remarks(),
        a.bones());
  }

  static ShelfBone bone(ElementKey element, Side side, Map<MeasurementCode, Double> values) {
    return new ShelfBone(element, side, Portion.WHOLE, Set.of(), values);
  }

  static BoneInHand inHand(String element, Optional<String> animal, String code, double value) {
    return new BoneInHand(
        "in hand",
        animal.map(AnimalId::new),
        new ElementKey(element),
        Side.LEFT,
        Portion.WHOLE,
        BoneState.notRecorded(),
        Map.of(new MeasurementCode(code), value));
  }
}
