package org.comparanda.statistics.discriminant;

import java.util.List;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;

/**
 * How well the calibrated list keeps its promise when every unit is held out.
 *
 * @param level the promise, for instance 0.95
 * @param held rows whose true group was on the list, of all rows that got one
 * @param meanLength groups on the list, on average
 */
public record Coverage(double level, Proportion held, double meanLength) {
  /** Offers every row to the others, its own unit left out. Not estimable if no row gets a list. */
  public static Outcome<Coverage> of(GroupedRows rows, double level) {
    int lists = 0;
    int held = 0;
    long length = 0;
    for (int i = 0; i < rows.rows(); i++) {
      int truth = rows.group(i);
      Outcome<List<ConformalRank>> ranks =
          Conformal.of(rows.withoutUnit(rows.unit(i))).ranks(rows.row(i));
      List<ConformalRank> listed =
          ranks.value().orElse(List.of()).stream().filter(r -> r.listed(level)).toList();
      lists += ranks.value().isPresent() ? 1 : 0;
      held += listed.stream().anyMatch(r -> r.group() == truth) ? 1 : 0;
      length += listed.size();
    }
    return lists == 0
        ? Outcome.none("Too few animals for any calibrated list.", "Add animals.")
        : Outcome.of(new Coverage(level, new Proportion(held, lists), (double) length / lists));
  }
}
