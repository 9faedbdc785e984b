package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Shelf;

/**
 * Where a measurement usually lies: what the shelf's animals show, or the protocol's range.
 *
 * @param low smallest, mm
 * @param high largest, mm
 * @param middle the shelf's median, or the geometric middle of the protocol's range, mm
 * @param source the words for it
 */
record UsualRange(double low, double high, double middle, String source) {
  private static final int ENOUGH = 5;

  boolean holds(double mm) {
    return low <= mm && mm <= high;
  }

  /** Of every quantity that the shelf (five values or more) or the protocol has a range for. */
  static Map<KnownWords.Quantity, UsualRange> all(Protocol protocol, Optional<Shelf> shelf) {
    Map<KnownWords.Quantity, UsualRange> ranges = new HashMap<>();
    protocol
        .measurements()
        .forEach(
            m ->
                m.plausible()
                    .ifPresent(
                        p ->
                            ranges.put(
                                new KnownWords.Quantity(m.element(), m.code()),
                                new UsualRange(
                                    p.lowMm(),
                                    p.highMm(),
                                    Math.sqrt(p.lowMm() * p.highMm()),
                                    "the protocol's range"))));
    shelf.ifPresent(s -> valuesOn(s).forEach((q, values) -> ranges.putAll(ofShelf(q, values))));
    return ranges;
  }

  private static Map<KnownWords.Quantity, UsualRange> ofShelf(
      KnownWords.Quantity quantity, List<Double> values) {
    if (values.size() < ENOUGH || Collections.min(values) <= 0) {
      return Map.of();
    }
    Collections.sort(values);
    return Map.of(
        quantity,
        new UsualRange(
            values.get(0),
            values.get(values.size() - 1),
            values.get(values.size() / 2),
            "the shelf"));
  }

  private static Map<KnownWords.Quantity, List<Double>> valuesOn(Shelf shelf) {
    Map<KnownWords.Quantity, List<Double>> values = new HashMap<>();
    shelf.animals().stream()
        .flatMap(a -> a.bones().stream())
        .forEach(
            bone ->
                bone.values()
                    .forEach(
                        (code, value) ->
                            values
                                .computeIfAbsent(
                                    new KnownWords.Quantity(bone.element(), code),
                                    q -> new ArrayList<>())
                                .add(value)));
    return values;
  }
}
