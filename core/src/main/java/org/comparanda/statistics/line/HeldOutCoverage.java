package org.comparanda.statistics.line;

import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;

/**
 * How often the prediction interval of the line fitted without a row holds that row: a row is
 * inside when its externally studentised residual is no further from zero than t.
 *
 * @param inside rows held, of all rows tried
 * @param level level of the prediction interval
 */
public record HeldOutCoverage(Proportion inside, double level) {
  /** The coverage over all rows of a line. */
  public static Outcome<HeldOutCoverage> of(
      Diagnostics diagnostics, int degreesOfFreedom, double level) {
    if (degreesOfFreedom < 2) {
      return Outcome.none(
          "Too few animals to hold one out and still have an interval.", "Add animals.");
    }
    double t = Distributions.tQuantile(0.5 + level / 2, degreesOfFreedom - 1);
    int inside = 0;
    for (Diagnostics.Row row : diagnostics.rows()) {
      if (row.studentised().value().isEmpty()) {
        return row.studentised().then(r -> Outcome.none("", ""));
      }
      inside += Math.abs(row.studentised().value().get()) <= t ? 1 : 0;
    }
    return Outcome.of(
        new HeldOutCoverage(new Proportion(inside, diagnostics.rows().size()), level));
  }

  /** Whether Wilson's 95 % interval of the rate holds the level promised. */
  public boolean asPromised() {
    return inside.wilson(0.95).contains(level);
  }
}
