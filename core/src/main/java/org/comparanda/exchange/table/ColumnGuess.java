package org.comparanda.exchange.table;

import java.util.Optional;
import org.comparanda.measurement.LengthUnit;

/**
 * What a column seems to be. A guess only: a person says what it is.
 *
 * @param header as it stands in the table
 * @param role the reserved column or the measurement that it seems to be; empty when it seems none
 * @param unit the unit that its header states, in whatever form
 * @param why on what the guess stands
 */
public record ColumnGuess(
    String header, Optional<String> role, Optional<LengthUnit> unit, Why why) {
  /** The header without a unit in brackets behind it: the name that the reader sees. */
  public String name() {
    return header.replaceFirst("\\s*(\\[[^\\]]*\\]|\\((mm|cm|m|in|g|kg|mg)\\))$", "");
  }

  /** Whether the header itself states the unit in a form that the reader understands. */
  public boolean statesUnit() {
    return !name().equals(header);
  }

  /** On what a guess stands. */
  public enum Why {
    SAME_NAME,
    ANOTHER_WORD,
    ALIKE,
    NOTHING
  }
}
