package org.comparanda.slips;

/** Size of a page, mm. */
public enum Paper {
  A4(210, 297),
  LETTER(215.9f, 279.4f);

  private final float widthMm;
  private final float heightMm;

  Paper(float widthMm, float heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  float widthMm() {
    return widthMm;
  }

  float heightMm() {
    return heightMm;
  }
}
