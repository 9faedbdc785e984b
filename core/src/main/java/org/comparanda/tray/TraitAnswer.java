package org.comparanda.tray;

/** What a person saw of a trait of a look-alike pair: part of the basis of a call, no more. */
public record TraitAnswer(String trait, Seen seen) {
  /** What was seen. */
  public enum Seen {
    YES,
    NO,
    CANT_SEE
  }
}
