package org.comparanda.statistics.discriminant;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.comparanda.statistics.Outcome;

/**
 * One method out of several settings of it, chosen on the rows themselves: the one with the best
 * mean log share of the true group when every unit is left out in turn.
 *
 * <p>Shares are floored at 1e-15; of equal settings the first counts. The rows that chose must not
 * judge: wrap this in outer folds to know how good it is.
 */
public record Tuned(List<Discriminant> settings) implements Discriminant {
  public Tuned {
    settings = List.copyOf(settings);
    if (settings.isEmpty()) {
      throw new IllegalArgumentException("At least one setting is needed");
    }
  }

  @Override
  public String name() {
    return settings.get(0).name();
  }

  @Override
  public Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors) {
    return fit(rows, priors, () -> false);
  }

  @Override
  public Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors, BooleanSupplier stopped) {
    Discriminant best = settings.get(0);
    double bestScore = Double.NEGATIVE_INFINITY;
    for (Discriminant setting : settings) {
      double score = logScore(rows, setting, priors, stopped);
      if (score > bestScore) {
        best = setting;
        bestScore = score;
      }
    }
    return best.fit(rows, priors, stopped);
  }

  /** Sum of ln share of the true group, in nats; a row without an answer counts as the floor. */
  private static double logScore(
      GroupedRows rows, Discriminant setting, Priors priors, BooleanSupplier stopped) {
    UnitMoments units = UnitMoments.of(rows);
    Map<Integer, Outcome<DiscriminantModel>> models = new HashMap<>();
    double sum = 0;
    for (int i = 0; i < rows.rows() && !stopped.getAsBoolean(); i++) {
      int group = rows.group(i);
      double[] x = rows.row(i);
      sum +=
          models
              .computeIfAbsent(
                  rows.unit(i), u -> setting.fitWithout(u, rows, units.without(u), priors))
              .fold(m -> ShareScore.log(m.shares(x), group), none -> ShareScore.WORST_LOG);
    }
    return sum;
  }
}
