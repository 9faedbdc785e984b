package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/**
 * What the protocol, the taxon tree and the shelf already know; grows by what a table registers.
 */
final class KnownWords {
  private final Protocol protocol;
  private final TaxonTree tree;
  private final Optional<Shelf> shelf;
  private final Map<ElementKey, Set<MeasurementCode>> codes = new HashMap<>();
  private final Map<Quantity, UsualRange> ranges;
  private final Set<TaxonName> taxa = new LinkedHashSet<>();
  private final Set<String> olderNames = new LinkedHashSet<>();
  private final List<Element> newElements = new ArrayList<>();
  private final List<Measurement> newMeasurements = new ArrayList<>();

  /** One measurement of one element. */
  record Quantity(ElementKey element, MeasurementCode code) {}

  KnownWords(Protocol protocol, TaxonTree tree, Optional<Shelf> shelf) {
    this.protocol = protocol;
    this.tree = tree;
    this.shelf = shelf;
    protocol.elements().forEach(e -> codes.put(e.key(), new LinkedHashSet<>()));
    protocol.measurements().forEach(m -> codesOf(m.element()).add(m.code()));
    tree.taxa().forEach(t -> taxa.add(t.name()));
    ranges = UsualRange.all(protocol, shelf);
    for (Animal animal : shelf.map(Shelf::animals).orElse(List.of())) {
      animal.taxon().ifPresent(taxa::add);
      for (ShelfBone bone : animal.bones()) {
        bone.values().keySet().forEach(code -> register(bone.element(), code, "the shelf"));
      }
    }
  }

  Protocol protocol() {
    return protocol.with(newElements, newMeasurements);
  }

  Optional<Shelf> shelf() {
    return shelf;
  }

  boolean knows(ElementKey element) {
    return codes.containsKey(element);
  }

  boolean knows(ElementKey element, MeasurementCode code) {
    return codes.getOrDefault(element, Set.of()).contains(code);
  }

  /** The name under which a taxon stands here; a name of a house that is no longer used is kept. */
  TaxonName standing(TaxonName written) {
    tree.standsUnder(written).ifPresent(olderNames::add);
    return tree.accepted(written);
  }

  /** What to say of the names read that are not the ones used. */
  Set<String> olderNames() {
    return olderNames;
  }

  boolean knows(TaxonName taxon) {
    return taxa.contains(taxon);
  }

  /** Whether it is a length by the protocol, so that it is always above zero. */
  boolean isLength(ElementKey element, MeasurementCode code) {
    return protocol.measurement(element, code).isPresent();
  }

  /** Whether any element has a measurement of that code. */
  boolean knowsCode(MeasurementCode code) {
    return codes.values().stream().anyMatch(known -> known.contains(code));
  }

  /** Whether the protocol itself has a measurement of that code. */
  boolean protocolHas(MeasurementCode code) {
    return protocol.measurements().stream().anyMatch(m -> m.code().equals(code));
  }

  List<String> codeNames() {
    return codes.values().stream().flatMap(Set::stream).map(MeasurementCode::value).toList();
  }

  List<String> codeNames(ElementKey element) {
    return codes.getOrDefault(element, Set.of()).stream().map(MeasurementCode::value).toList();
  }

  List<String> elementNames() {
    return codes.keySet().stream().map(ElementKey::value).toList();
  }

  List<String> taxonNames() {
    return taxa.stream().map(TaxonName::value).toList();
  }

  Symmetry symmetry(ElementKey element) {
    return protocol.element(element).map(Element::symmetry).orElse(Symmetry.SIDED);
  }

  Optional<UsualRange> range(ElementKey element, MeasurementCode code) {
    return Optional.ofNullable(ranges.get(new Quantity(element, code)));
  }

  void register(TaxonName taxon) {
    taxa.add(taxon);
  }

  void register(ElementKey element, String source) {
    if (!knows(element)) {
      codes.put(element, new LinkedHashSet<>());
      newElements.add(
          new Element(
              element,
              element.value(),
              "registered",
              Symmetry.SIDED,
              Map.of(),
              List.of(),
              "",
              source));
    }
  }

  void register(ElementKey element, MeasurementCode code, String source) {
    register(element, source);
    if (codesOf(element).add(code)) {
      newMeasurements.add(
          new Measurement(
              element,
              code,
              code.value(),
              "registered by " + source,
              List.of(),
              Optional.empty(),
              List.of(),
              Optional.empty(),
              0.01,
              1,
              source));
    }
  }

  private Set<MeasurementCode> codesOf(ElementKey element) {
    return codes.computeIfAbsent(element, e -> new LinkedHashSet<>());
  }

  TaxonTree tree() {
    return tree;
  }
}
