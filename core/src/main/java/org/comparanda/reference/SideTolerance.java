package org.comparanda.reference;

/**
 * How far the left and the right bone of an animal may differ.
 *
 * @param part of the larger of the two
 */
public record SideTolerance(double part) {
  /** A twentieth (common practice, no source). */
  public static SideTolerance usual() {
    return new SideTolerance(0.05);
  }

  /** Whether two lengths in mm differ by more. */
  public boolean exceeds(double leftMm, double rightMm) {
    return Math.abs(leftMm - rightMm) > part * Math.max(Math.abs(leftMm), Math.abs(rightMm));
  }
}
