package org.comparanda.gui.shelf;

import java.util.List;

/**
 * One animal as its card shows it.
 *
 * @param number catalogue number
 * @param taxon italic under it
 * @param facts label and text, one line each
 * @param bones its bones
 */
public record AnimalCard(String number, String taxon, List<Fact> facts, List<BoneLine> bones) {
  public AnimalCard {
    facts = List.copyOf(facts);
    bones = List.copyOf(bones);
  }

  /** A labelled text. */
  public record Fact(String label, String text) {}

  /**
   * One bone.
   *
   * @param name element, side, portion
   * @param readings codes with values in mm
   * @param state flags, and whether it feeds fits; empty for a sound bone
   */
  public record BoneLine(String name, String readings, String state) {}
}
