package org.comparanda.pile;

import java.time.LocalDate;
import org.comparanda.taxon.TaxonName;

/**
 * Something that came in to become a comparative skeleton.
 *
 * @param number its number in the book of arrivals
 * @param taxon as given; may be a group
 * @param what carcass, skeleton, parts, in words
 * @param cameIn day it came in
 * @param from where and from whom, as recorded
 * @param stage how far it is
 * @param place where it lies; may be empty
 * @param permit number of the permit, empty for none; what it says decides
 * @param remarks free text
 */
public record Arrival(
    String number,
    TaxonName taxon,
    String what,
    LocalDate cameIn,
    String from,
    Stage stage,
    String place,
    String permit,
    String remarks) {
  public Arrival {
    if (number.isBlank()) {
      throw new IllegalArgumentException("An arrival needs a number.");
    }
  }

  /** How far it is on its way to the shelf. */
  public enum Stage {
    FROZEN,
    MACERATING,
    CLEANED,
    TO_MEASURE,
    ON_THE_SHELF,
    LET_GO;

    /** Whether it still lies on the pile. */
    public boolean open() {
      return this != ON_THE_SHELF && this != LET_GO;
    }
  }

  /** The same arrival at another stage. */
  public Arrival withStage(Stage other) {
    return new Arrival(number, taxon, what, cameIn, from, other, place, permit, remarks);
  }
}
