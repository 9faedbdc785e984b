package org.comparanda.sizeestimate;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.statistics.Outcome;

/** Finds what a name stands for on a shelf, and each animal's value of it. */
final class ShelfQuantities {
  private final Protocol protocol;
  private final Map<MeasurementCode, Set<ElementKey>> holders = new HashMap<>();

  ShelfQuantities(Shelf shelf, Protocol protocol) {
    this.protocol = protocol;
    for (Animal animal : shelf.animals()) {
      for (ShelfBone bone : animal.bones()) {
        for (MeasurementCode code : bone.values().keySet()) {
          holders.computeIfAbsent(code, c -> new TreeSet<>()).add(bone.element());
        }
      }
    }
  }

  /** The quantity with that name: {@code element.code}, a code of one element, or of the body. */
  Outcome<Quantity> named(String name) {
    List<ElementKey> holders = elementsWith(new MeasurementCode(name));
    if (holders.size() == 1) {
      return Outcome.of(measurement(name, holders.get(0), new MeasurementCode(name)));
    }
    if (holders.size() > 1) {
      return Outcome.none(
          "\"" + name + "\" is measured on several elements.",
          "Write one of "
              + holders.stream().map(e -> e + "." + name).collect(Collectors.joining(", "))
              + ".");
    }
    if (name.equals(Quantity.BODY_LENGTH)) {
      return Outcome.of(Quantity.bodyLength());
    }
    if (name.equals(Quantity.BODY_MASS)) {
      return Outcome.of(Quantity.bodyMass());
    }
    int dot = name.indexOf('.');
    if (dot > 0 && dot < name.length() - 1) {
      ElementKey element = new ElementKey(name.substring(0, dot));
      MeasurementCode code = new MeasurementCode(name.substring(dot + 1));
      if (elementsWith(code).contains(element)) {
        return Outcome.of(measurement(name, element, code));
      }
    }
    return Outcome.none(
        "No animal on the shelf has \"" + name + "\".",
        "Ask for body_length, body_mass or element.code of a measurement on the shelf.");
  }

  /**
   * The animal's value: the mean over its bones of that element that may feed a fit, of logs where
   * the line is fitted to logs.
   */
  Optional<Double> of(Animal animal, Quantity quantity, LineScale scale) {
    if (quantity.element().isEmpty()) {
      return quantity.isBodyMass() ? animal.bodyMassG() : animal.bodyLengthMm();
    }
    List<Double> values =
        animal.bones().stream()
            .filter(ShelfBone::feedsFits)
            .filter(b -> quantity.element().equals(Optional.of(b.element())))
            .flatMap(b -> quantity.code().map(b.values()::get).stream())
            .toList();
    if (values.size() <= 1 || values.stream().anyMatch(v -> scale.logs() && v <= 0)) {
      return values.stream().findFirst();
    }
    double mean =
        values.stream().mapToDouble(v -> scale.logs() ? Math.log(v) : v).average().orElseThrow();
    return Optional.of(scale.logs() ? Math.exp(mean) : mean);
  }

  private Quantity measurement(String name, ElementKey element, MeasurementCode code) {
    Optional<Measurement> known = protocol.measurement(element, code);
    String bone = protocol.element(element).map(Element::name).orElse(element.value());
    boolean unnamed = element.equals(ElementKey.UNNAMED);
    boolean length =
        known.isPresent() && known.get().name().toLowerCase(Locale.ROOT).contains("length");
    return new Quantity(
        name,
        Optional.of(element),
        Optional.of(code),
        unnamed ? code.value() : bone.toLowerCase(Locale.ROOT) + " " + code,
        length ? Dimension.LENGTH : Dimension.SIZE,
        known.isPresent() ? "mm" : "");
  }

  private List<ElementKey> elementsWith(MeasurementCode code) {
    return List.copyOf(holders.getOrDefault(code, Set.of()));
  }
}
