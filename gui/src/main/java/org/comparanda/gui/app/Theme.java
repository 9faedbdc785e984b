package org.comparanda.gui.app;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;

/** Light paper or dark slate: a base for the ordinary controls, and our own colours over it. */
public enum Theme {
  LIGHT(new PrimerLight().getUserAgentStylesheet(), "light.css"),
  DARK(new PrimerDark().getUserAgentStylesheet(), "dark.css");

  private final String base;
  private final String tokens;

  Theme(String base, String tokens) {
    this.base = base;
    this.tokens = tokens;
  }

  /** Style sheet of the ordinary controls. */
  String base() {
    return base;
  }

  /** File of our colours. */
  String tokens() {
    return tokens;
  }

  /** The other one. */
  public Theme other() {
    return this == LIGHT ? DARK : LIGHT;
  }
}
