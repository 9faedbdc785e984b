package org.comparanda.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;

/** All elements, measurements and part rules that the room knows, in the order of the files. */
public record Protocol(
    List<Element> elements, List<Measurement> measurements, List<PartRule> partRules) {
  public Protocol {
    elements = List.copyOf(elements);
    measurements = List.copyOf(measurements);
    partRules = List.copyOf(partRules);
  }

  /** The element with that key. */
  public Optional<Element> element(ElementKey key) {
    return elements.stream().filter(e -> e.key().equals(key)).findFirst();
  }

  /** The measurements of an element, in protocol order; empty when it has none. */
  public List<Measurement> of(ElementKey element) {
    return measurements.stream().filter(m -> m.element().equals(element)).toList();
  }

  /** One measurement of an element. */
  public Optional<Measurement> measurement(ElementKey element, MeasurementCode code) {
    return of(element).stream().filter(m -> m.code().equals(code)).findFirst();
  }

  /** With what a measurement is taken; with the caliper where the protocol doesn't know it. */
  public How how(ElementKey element, MeasurementCode code) {
    return measurement(element, code).map(Measurement::how).orElse(How.CALIPER);
  }

  /** The part rules of an element. */
  public List<PartRule> partRules(ElementKey element) {
    return partRules.stream().filter(r -> r.element().equals(element)).toList();
  }

  /** This protocol with further elements and measurements, as a table may bring them. */
  public Protocol with(List<Element> moreElements, List<Measurement> moreMeasurements) {
    List<Element> allElements = new ArrayList<>(elements);
    allElements.addAll(moreElements);
    List<Measurement> allMeasurements = new ArrayList<>(measurements);
    allMeasurements.addAll(moreMeasurements);
    return new Protocol(allElements, allMeasurements, partRules);
  }
}
