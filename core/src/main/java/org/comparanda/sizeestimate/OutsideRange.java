package org.comparanda.sizeestimate;

/**
 * A bone smaller or larger than all on the line.
 *
 * @param predictor the measurement, as asked
 * @param end which end of the range it lies beyond
 * @param percent by how much, per cent of that end, above zero
 * @param nearest the end of the range itself, own unit
 * @param dimension whether that is longer, heavier or larger
 * @param sentence in words and number, for example "31 % longer than the longest mandible GL on the
 *     shelf"
 */
public record OutsideRange(
    String predictor,
    End end,
    double percent,
    double nearest,
    Dimension dimension,
    String sentence) {
  /** Which end of the range. */
  public enum End {
    BELOW,
    ABOVE
  }
}
