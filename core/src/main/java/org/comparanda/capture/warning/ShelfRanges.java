package org.comparanda.capture.warning;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;

/**
 * Smallest and largest value of each measurement of one element on the shelf, mm, over all bones
 * that may feed a fit.
 */
public record ShelfRanges(Map<MeasurementCode, Measurement.Range> ranges) {
  public ShelfRanges {
    ranges = Collections.unmodifiableMap(new TreeMap<>(ranges));
  }

  public static ShelfRanges of(Shelf shelf, ElementKey element) {
    Map<MeasurementCode, Measurement.Range> ranges = new TreeMap<>();
    shelf.animals().stream()
        .filter(Animal::feedsFits)
        .flatMap(animal -> animal.bones().stream())
        .filter(bone -> bone.element().equals(element))
        .filter(ShelfBone::feedsFits)
        .flatMap(bone -> bone.values().entrySet().stream())
        .forEach(
            value ->
                ranges.merge(
                    value.getKey(),
                    new Measurement.Range(value.getValue(), value.getValue()),
                    ShelfRanges::around));
    return new ShelfRanges(ranges);
  }

  /** The range of a measurement; empty when the shelf has none. */
  public Optional<Measurement.Range> of(MeasurementCode code) {
    return Optional.ofNullable(ranges.get(code));
  }

  private static Measurement.Range around(Measurement.Range one, Measurement.Range other) {
    return new Measurement.Range(
        Math.min(one.lowMm(), other.lowMm()), Math.max(one.highMm(), other.highMm()));
  }
}
