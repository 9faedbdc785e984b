package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.How;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * What the shelf has of one element, in numbers: the animals that may feed fits, in catalogue
 * order, and the measurements that any of them has, in protocol order.
 *
 * @param codes measurements, those of the protocol first; those taken with the tape only where the
 *     shelf has no others of the element
 * @param shown smallest and largest value of each measurement, on the scale
 */
record ElementRows(
    ElementKey element,
    List<MeasurementCode> codes,
    List<AnimalRow> animals,
    Map<MeasurementCode, Range> shown) {
  ElementRows {
    codes = List.copyOf(codes);
    animals = List.copyOf(animals);
    shown = Map.copyOf(shown);
  }

  static ElementRows of(
      Shelf shelf, Protocol protocol, TaxonTree tree, ElementKey element, ComparisonRules rules) {
    Set<TaxonName> out =
        rules.setAside().stream()
            .map(aside -> tree.accepted(aside.taxon()))
            .collect(Collectors.toSet());
    List<AnimalRow> animals = new ArrayList<>();
    for (Animal animal : shelf.animals()) {
      List<BoneRow> bones = bones(animal, element, rules.scale());
      animal
          .taxon()
          .filter(taxon -> !out.contains(tree.accepted(taxon)) && !bones.isEmpty())
          .ifPresent(taxon -> animals.add(row(animal, taxon, bones)));
    }
    return new ElementRows(element, codes(protocol, element, animals), animals, shown(animals));
  }

  /** The taxa of these animals, in alphabetical order. */
  List<TaxonName> taxa() {
    return animals.stream().map(AnimalRow::taxon).distinct().sorted().toList();
  }

  /** The animals that have every measurement of the set. */
  List<AnimalRow> having(List<MeasurementCode> set) {
    return animals.stream().filter(a -> a.mean().has(set)).toList();
  }

  /** A warning where a reading is outside what any of these animals shows, on the scale. */
  Optional<String> outside(MeasurementCode code, double value, Scale scale) {
    Optional<Range> range = Optional.ofNullable(shown.get(code));
    if (range.isEmpty() || range.get().holds(value)) {
      return Optional.empty();
    }
    return Optional.of(
        code
            + " "
            + Wording.reading(offScale(value, scale))
            + " is outside what any animal on the shelf shows ("
            + Wording.reading(offScale(range.get().lowest(), scale))
            + " to "
            + Wording.reading(offScale(range.get().highest(), scale))
            + "). Check the reading and its unit.");
  }

  /** Smallest and largest value of a measurement, on the scale. */
  record Range(double lowest, double highest) {
    boolean holds(double value) {
      return value >= lowest && value <= highest;
    }

    Range with(Range other) {
      return new Range(Math.min(lowest, other.lowest), Math.max(highest, other.highest));
    }
  }

  private static Map<MeasurementCode, Range> shown(List<AnimalRow> animals) {
    Map<MeasurementCode, Range> shown = new TreeMap<>();
    for (AnimalRow animal : animals) {
      for (BoneRow bone : animal.bones()) {
        bone.values().forEach((code, v) -> shown.merge(code, new Range(v, v), Range::with));
      }
    }
    return shown;
  }

  /** Back from the scale to mm, or to the table's own unit. */
  static double offScale(double value, Scale scale) {
    return scale == Scale.RAW ? value : Math.exp(value);
  }

  /** The values of a bone that can be compared, on the scale: present, finite, and log possible. */
  static BoneRow scaled(
      org.comparanda.bone.Side side, Map<MeasurementCode, Double> values, Scale scale) {
    Map<MeasurementCode, Double> usable = new TreeMap<>();
    values.forEach((code, value) -> onScale(value, scale).ifPresent(v -> usable.put(code, v)));
    return new BoneRow(side, usable);
  }

  private static Optional<Double> onScale(double value, Scale scale) {
    if (!Double.isFinite(value) || (scale != Scale.RAW && value <= 0)) {
      return Optional.empty();
    }
    return Optional.of(scale == Scale.RAW ? value : Math.log(value));
  }

  private static List<BoneRow> bones(Animal animal, ElementKey element, Scale scale) {
    if (!animal.feedsFits()) {
      return List.of();
    }
    return animal.bones().stream()
        .filter(b -> b.element().equals(element) && b.feedsFits())
        .map((ShelfBone b) -> scaled(b.side(), b.values(), scale))
        .filter(b -> !b.values().isEmpty())
        .toList();
  }

  private static AnimalRow row(Animal animal, TaxonName taxon, List<BoneRow> bones) {
    Optional<String> drawer =
        animal.source() == Source.OWN_DRAWER ? animal.drawer() : Optional.empty();
    return new AnimalRow(animal.id(), taxon, drawer, BoneRow.mean(bones), bones);
  }

  private static List<MeasurementCode> codes(
      Protocol protocol, ElementKey element, List<AnimalRow> animals) {
    Set<MeasurementCode> present = new TreeSet<>();
    animals.forEach(a -> present.addAll(a.mean().values().keySet()));
    List<Measurement> known = protocol.of(element);
    List<MeasurementCode> tape =
        known.stream().filter(m -> m.how() == How.TAPE).map(Measurement::code).toList();
    if (!tape.containsAll(present)) {
      tape.forEach(present::remove); // a fit is straight or curved, never both
    }
    List<MeasurementCode> inOrder = new ArrayList<>();
    for (Measurement measurement : known) {
      if (present.remove(measurement.code())) {
        inOrder.add(measurement.code());
      }
    }
    inOrder.addAll(present);
    return inOrder;
  }
}
