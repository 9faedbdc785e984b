package org.comparanda.statistics.discriminant;

import java.util.List;
import org.comparanda.statistics.Outcome;

/**
 * One method out of several settings of it, chosen on the rows themselves: the one with the best
 * mean log share of the true group when every unit is left out in turn.
 *
 * <p>Shares are floored at 1e-15; of equal settings the first counts. The rows that chose must not
 * judge: wrap this in outer folds to know how good it is.
 */
public record Tuned(List<Discriminant> settings) implements Discriminant {
  private static final double FLOOR = 1e-15;

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
    Discriminant best = settings.get(0);
    double bestScore = Double.NEGATIVE_INFINITY;
    for (Discriminant setting : settings) {
      double score = logScore(Trial.of(rows, setting, priors));
      if (score > bestScore) {
        best = setting;
        bestScore = score;
      }
    }
    return best.fit(rows, priors);
  }

  /** Sum of ln share of the true group, in nats; a row without an answer counts as the floor. */
  private static double logScore(Trial trial) {
    return trial.rows().stream()
        .mapToDouble(
            row ->
                Math.log(row.shares().fold(s -> Math.max(s.of(row.group()), FLOOR), none -> FLOOR)))
        .sum();
  }
}
