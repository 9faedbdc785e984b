package org.comparanda.gui.shelf.skeleton;

import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.gui.capture.ReadingRow;

/**
 * One measurement of both sides.
 *
 * @param first what stands under the left bone, or the midline one
 * @param second what stands under the right bone; empty for an element of the midline
 * @param difference of the sides in percent, once both are measured
 * @param standing whether the sides agree
 * @param waits the side whose field waits for this reading
 */
public record SkeletonRow(
    ReadingRow first,
    Optional<ReadingRow> second,
    String difference,
    Standing standing,
    Optional<Side> waits) {
  /** Whether the sides agree. */
  public enum Standing {
    NOT_COMPARED,
    AGREE,
    DIFFER
  }
}
