package org.comparanda.exchange.json;

import java.util.Optional;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineChecks;
import org.comparanda.sizeestimate.SeveralBones;
import org.comparanda.statistics.Outcome;

/**
 * A size line and what was asked about it.
 *
 * @param line the line, or why there is none
 * @param several how it compares with the best single measurement, where there were several
 * @param checks whether it keeps its promises, where that was asked
 */
public record SizeReport(
    Outcome<FittedLine> line,
    Optional<Outcome<SeveralBones>> several,
    Optional<Outcome<LineChecks>> checks) {
  /** A line alone. */
  public static SizeReport of(Outcome<FittedLine> line) {
    return new SizeReport(line, Optional.empty(), Optional.empty());
  }
}
