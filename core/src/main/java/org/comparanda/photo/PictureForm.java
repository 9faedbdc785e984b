package org.comparanda.photo;

/** How a picture is written in its file. */
public enum PictureForm {
  JPEG(".jpg"),
  PNG(".png");

  private final String ending;

  PictureForm(String ending) {
    this.ending = ending;
  }

  /** How the names of such files end. */
  public String ending() {
    return ending;
  }
}
