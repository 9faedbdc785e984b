package org.comparanda.exchange.table;

import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;

/**
 * What a column of measurements is about.
 *
 * @param element named in the header itself, {@code humerus.GL}; otherwise that of the row
 * @param code the measurement
 */
record ColumnSubject(Optional<ElementKey> element, MeasurementCode code) {
  /** Cuts a name at the dot where it begins with a known element and is no code itself. */
  static ColumnSubject of(String name, KnownWords known) {
    MeasurementCode whole = new MeasurementCode(name);
    int dot = name.indexOf('.');
    if (dot > 0 && dot < name.length() - 1 && !known.knowsCode(whole)) {
      ElementKey element = new ElementKey(name.substring(0, dot));
      if (known.knows(element)) {
        return new ColumnSubject(
            Optional.of(element), new MeasurementCode(name.substring(dot + 1)));
      }
    }
    return new ColumnSubject(Optional.empty(), whole);
  }

  /** Whether both can be the same measurement. */
  boolean meets(ColumnSubject other) {
    return code.equals(other.code)
        && (element.isEmpty() || other.element.isEmpty() || element.equals(other.element));
  }

  /** As a header writes it. */
  String name() {
    return element.map(e -> e + "." + code).orElseGet(code::value);
  }
}
