package org.comparanda.slips;

/** Size of a page, mm. */
public enum Paper {
  A4("A4", 210, 297),
  LETTER("Letter", 215.9f, 279.4f);

  private final String title;
  private final float widthMm;
  private final float heightMm;

  Paper(String title, float widthMm, float heightMm) {
    this.title = title;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** Its name, the same in every language. */
  public String title() {
    return title;
  }

  float widthMm() {
    return widthMm;
  }

  float heightMm() {
    return heightMm;
  }
}
