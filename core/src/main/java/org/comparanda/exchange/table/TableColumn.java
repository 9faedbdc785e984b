package org.comparanda.exchange.table;

import java.util.Optional;
import org.comparanda.measurement.MeasurementCode;

/**
 * One column that is read, and as what.
 *
 * @param index place in the row, from 0
 * @param header as it stands in the file
 * @param reserved its meaning, unless it is a measurement
 * @param code the measurement, unless it is reserved
 * @param unit how its numbers become mm (or g)
 */
record TableColumn(
    int index,
    String header,
    Optional<ReservedColumn> reserved,
    Optional<MeasurementCode> code,
    ColumnUnit unit) {

  boolean numeric() {
    return code.isPresent() || reserved.filter(ReservedColumn::numeric).isPresent();
  }
}
