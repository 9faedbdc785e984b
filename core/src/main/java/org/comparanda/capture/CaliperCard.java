package org.comparanda.capture;

import java.time.LocalDate;
import java.util.Optional;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;

/**
 * One caliper that types like a keyboard. Every reading names the card it came through.
 *
 * <p>Errors: {@link IllegalArgumentException} if the name is blank, the mark is neither point nor
 * comma, or the decimals are not 0 ≤ fewest ≤ most ≤ 6.
 *
 * @param name name in the room, unique
 * @param serial number on the instrument, may be empty
 * @param unit unit of values sent without one
 * @param decimalMark point or comma; the other one is refused
 * @param fewestDecimals digits after the mark at least (fewer than {@code decimals} where the
 *     caliper drops closing zeros)
 * @param decimals digits after the mark at most
 * @param lineEnd what follows each value
 * @param resolution its smallest step
 * @param reach how far its jaws open, empty when not known
 * @param lastCheck day of the last check on a gauge block, empty when never
 */
public record CaliperCard(
    String name,
    String serial,
    LengthUnit unit,
    char decimalMark,
    int fewestDecimals,
    int decimals,
    LineEnd lineEnd,
    Length resolution,
    Optional<Length> reach,
    Optional<LocalDate> lastCheck) {
  public CaliperCard {
    if (name.isBlank()) {
      throw new IllegalArgumentException("A caliper card needs a name.");
    }
    if (decimalMark != '.' && decimalMark != ',') {
      throw new IllegalArgumentException("A decimal mark is a point or a comma.");
    }
    if (fewestDecimals < 0 || fewestDecimals > decimals || decimals > 6) {
      throw new IllegalArgumentException("A caliper shows 0 to 6 decimals, fewest first.");
    }
  }

  /** The same caliper, whose jaws open that far. */
  public CaliperCard withReach(Length farthest) {
    return new CaliperCard(
        name,
        serial,
        unit,
        decimalMark,
        fewestDecimals,
        decimals,
        lineEnd,
        resolution,
        Optional.of(farthest),
        lastCheck);
  }

  /** The same caliper, checked on a gauge block that day. */
  public CaliperCard withLastCheck(LocalDate day) {
    return new CaliperCard(
        name,
        serial,
        unit,
        decimalMark,
        fewestDecimals,
        decimals,
        lineEnd,
        resolution,
        reach,
        Optional.of(day));
  }
}
