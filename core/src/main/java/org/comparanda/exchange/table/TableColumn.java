package org.comparanda.exchange.table;

import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;

/**
 * One column that is read, and as what.
 *
 * @param index place in the row, from 0
 * @param header as it stands in the file
 * @param reserved its meaning, unless it is a measurement
 * @param element the element that the header itself names, {@code humerus.GL}
 * @param code the measurement, unless it is reserved
 * @param unit how its numbers become mm (or g)
 */
record TableColumn(
    int index,
    String header,
    Optional<ReservedColumn> reserved,
    Optional<ElementKey> element,
    Optional<MeasurementCode> code,
    ColumnUnit unit) {

  /** The measurement with the element where the header names one. */
  String measured() {
    return subject().name();
  }

  /** What a column of measurements is about. */
  ColumnSubject subject() {
    return new ColumnSubject(element, code.orElseThrow());
  }

  boolean numeric() {
    return code.isPresent() || reserved.filter(ReservedColumn::numeric).isPresent();
  }
}
