package org.comparanda.gui.capture;

import org.comparanda.measurement.MeasurementCode;

/**
 * One line of the readings table.
 *
 * @param code what is measured
 * @param name its name
 * @param first what stands under pass 1
 * @param second what stands under pass 2, a third take after it
 * @param kept the value that counts, or why there is none
 * @param standing where it stands
 */
public record ReadingRow(
    MeasurementCode code,
    String name,
    String first,
    String second,
    String kept,
    Standing standing) {
  /** The same with another value that counts. */
  public ReadingRow withKept(String other) {
    return new ReadingRow(code, name, first, second, other, standing);
  }

  /** Where a measurement stands. */
  public enum Standing {
    /** Waits for the next reading. */
    CURRENT,
    /** Its turn has not come, or is over. */
    WAITING,
    /** It goes with the part of the bone that is missing. */
    GONE
  }
}
