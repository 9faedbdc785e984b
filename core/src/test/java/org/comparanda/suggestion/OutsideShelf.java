package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.outside.OutsideSet;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** Outside data sets as shelves: one animal a row, one bone each, plain numbers. */
final class OutsideShelf {
  static final ElementKey ELEMENT = ElementKey.UNNAMED;
  static final Protocol PROTOCOL = new Protocol(List.of(), List.of(), List.of());

  private OutsideShelf() {}

  static Comparison compare(Shelf shelf, ComparisonRules rules) {
    return Comparison.of(shelf, PROTOCOL, TaxonTree.empty(), rules);
  }

  static Shelf of(OutsideSet set) {
    List<Animal> animals = new ArrayList<>();
    for (int row = 0; row < set.rows().rows(); row++) {
      animals.add(
          animal(
              id(row),
              set.classes().get(set.rows().group(row)),
              List.of(bone(Side.NOT_KNOWN, set.variables(), set.rows().row(row)))));
    }
    return new Shelf(animals);
  }

  static AnimalId id(int row) {
    return new AnimalId("%05d".formatted(row));
  }

  static Animal animal(AnimalId id, String taxon, List<ShelfBone> bones) {
    return new Animal(
        id,
        Optional.of(new TaxonName(taxon)),
        Source.PUBLICATION,
        Optional.empty(),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "",
        bones);
  }

  static ShelfBone bone(Side side, List<String> codes, double... values) {
    return new ShelfBone(ELEMENT, side, Portion.WHOLE, Set.of(), values(codes, values));
  }

  static BoneInHand inHand(String id, Optional<AnimalId> animal, ShelfBone bone) {
    return new BoneInHand(
        id,
        animal,
        bone.element(),
        bone.side(),
        bone.portion(),
        BoneState.notRecorded(),
        bone.values());
  }

  private static Map<MeasurementCode, Double> values(List<String> codes, double... values) {
    Map<MeasurementCode, Double> map = new TreeMap<>();
    for (int j = 0; j < values.length; j++) {
      map.put(new MeasurementCode(codes.get(j)), values[j]);
    }
    return map;
  }
}
