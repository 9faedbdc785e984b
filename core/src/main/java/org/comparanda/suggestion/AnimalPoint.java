package org.comparanda.suggestion;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;

/**
 * One comparative animal as a dot in the picture: the mean of its sides per measurement (of logs
 * unless the scale is raw, turned back), mm; a measurement that it lacks is absent.
 *
 * @param drawer where to look, for animals of the own drawer
 */
public record AnimalPoint(
    AnimalId animal,
    TaxonName taxon,
    Optional<String> drawer,
    Map<MeasurementCode, Double> values) {
  public AnimalPoint {
    values = Collections.unmodifiableMap(new TreeMap<>(values));
  }
}
