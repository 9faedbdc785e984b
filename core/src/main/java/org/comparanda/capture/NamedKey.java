package org.comparanda.capture;

/** Keys that type nothing. */
public enum NamedKey {
  ENTER,
  BACKSPACE,
  ESCAPE,
  DEFINITION,
  STOP
}
