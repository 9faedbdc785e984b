package org.comparanda.statistics.discriminant;

import java.util.function.BooleanSupplier;
import org.comparanda.statistics.Outcome;

/**
 * A way to learn from grouped rows which group a new row fits. Holds options only: fitting twice
 * gives the same model. The order of rows, of columns and of groups does not matter.
 */
public interface Discriminant {
  /** Name in results and commands, for instance "linear". */
  String name();

  /** Fits; not estimable where rows are too few. */
  Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors);

  /**
   * Fits without the rows of one unit.
   *
   * @param left the moments of the rows without that unit
   */
  default Outcome<DiscriminantModel> fitWithout(
      int unit, GroupedRows rows, GroupMoments left, Priors priors) {
    return fit(rows.withoutUnit(unit), priors);
  }

  /**
   * Fits, unless told to stop on the way: methods that take long ask often.
   *
   * @param stopped when it says yes, the fit ends as not estimable
   */
  default Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors, BooleanSupplier stopped) {
    return stopped.getAsBoolean()
        ? Outcome.none("The fit was stopped.", "Start it again.")
        : fit(rows, priors);
  }
}
