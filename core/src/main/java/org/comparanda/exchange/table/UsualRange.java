package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Shelf;

/**
 * Where a measurement usually lies: what the shelf's animals show, or the protocol's range.
 *
 * @param low smallest, mm
 * @param high largest, mm
 * @param middle the shelf's median, or the geometric middle of the protocol's range, mm
 * @param proportion geometric middle of the protocol's range, mm: comparable between measurements,
 *     which the medians of a shelf are not where each was taken on other animals
 * @param source the words for it
 */
record UsualRange(
    double low, double high, double middle, Optional<Double> proportion, String source) {
  private static final int ENOUGH = 5;

  boolean holds(double mm) {
    return low <= mm && mm <= high;
  }

  /** Of every quantity that the shelf (five values or more) or the protocol has a range for. */
  static Map<KnownWords.Quantity, UsualRange> all(Protocol protocol, Optional<Shelf> shelf) {
    Map<KnownWords.Quantity, UsualRange> ranges = new HashMap<>();
    for (Measurement m : protocol.measurements()) {
      m.plausible()
          .ifPresent(
              p -> ranges.put(new KnownWords.Quantity(m.element(), m.code()), ofProtocol(p)));
    }
    shelf.ifPresent(
        s ->
            valuesOn(s)
                .forEach(
                    (q, values) ->
                        ofShelf(values, Optional.ofNullable(ranges.get(q)))
                            .ifPresent(range -> ranges.put(q, range))));
    return ranges;
  }

  private static UsualRange ofProtocol(Measurement.Range range) {
    double middle = Math.sqrt(range.lowMm() * range.highMm());
    return new UsualRange(
        range.lowMm(), range.highMm(), middle, Optional.of(middle), "the protocol's range");
  }

  private static Optional<UsualRange> ofShelf(
      List<Double> values, Optional<UsualRange> ofProtocol) {
    if (values.size() < ENOUGH || Collections.min(values) <= 0) {
      return Optional.empty();
    }
    Collections.sort(values);
    return Optional.of(
        new UsualRange(
            values.get(0),
            values.get(values.size() - 1),
            values.get(values.size() / 2),
            ofProtocol.flatMap(UsualRange::proportion),
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
