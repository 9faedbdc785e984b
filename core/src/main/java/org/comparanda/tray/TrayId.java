package org.comparanda.tray;

/** Key of a tray. Never blank. */
public record TrayId(String value) {
  public TrayId {
    if (value.isBlank()) {
      throw new IllegalArgumentException("A tray needs a key.");
    }
  }
}
