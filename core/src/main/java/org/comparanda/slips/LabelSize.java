package org.comparanda.slips;

/** Size of one label on a sheet to be cut, mm, and of its lettering, points. */
public enum LabelSize {
  /** Two in a row. */
  ORDINARY(92, 42, 8),
  /** Small archival labels, three in a row, for vials and small boxes. */
  SMALL(60, 28, 5.5f);

  private final float widthMm;
  private final float heightMm;
  private final float points;

  LabelSize(float widthMm, float heightMm, float points) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
    this.points = points;
  }

  float widthMm() {
    return widthMm;
  }

  float heightMm() {
    return heightMm;
  }

  float points() {
    return points;
  }
}
