package org.comparanda.gui.shelf.keeping;

import org.comparanda.measurement.MeasurementCode;

/**
 * One measurement of both sides.
 *
 * @param code code
 * @param name what it is
 * @param left values of the left bone, or the midline one, that may be seen now
 * @param right values of the right bone
 * @param difference of the sides in percent, once both are measured
 * @param standing whether the sides agree
 * @param waiting which side waits for this reading
 */
public record SkeletonRow(
    MeasurementCode code,
    String name,
    String left,
    String right,
    String difference,
    Standing standing,
    Waiting waiting) {
  /** Whether the sides agree. */
  public enum Standing {
    NOT_COMPARED,
    AGREE,
    DIFFER
  }

  /** Which side waits for this reading. */
  public enum Waiting {
    NONE,
    LEFT,
    RIGHT
  }
}
