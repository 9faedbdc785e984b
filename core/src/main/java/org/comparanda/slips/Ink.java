package org.comparanda.slips;

/** Shades of one ink, 0 black to 1 paper. */
enum Ink {
  BLACK(0),
  GREY(0.42f),
  LINE(0.72f),
  STRIP(0.93f);

  private final float shade;

  Ink(float shade) {
    this.shade = shade;
  }

  float shade() {
    return shade;
  }
}
