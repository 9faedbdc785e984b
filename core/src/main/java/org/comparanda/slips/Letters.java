package org.comparanda.slips;

/** How a line of text is set. */
enum Letters {
  PLAIN("DejaVuSans.ttf"),
  BOLD("DejaVuSans-Bold.ttf"),
  ITALIC("DejaVuSans-Oblique.ttf");

  private final String file;

  Letters(String file) {
    this.file = file;
  }

  String file() {
    return file;
  }
}
