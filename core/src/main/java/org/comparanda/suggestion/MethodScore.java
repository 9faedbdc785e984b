package org.comparanda.suggestion;

import org.comparanda.statistics.Proportion;
import org.comparanda.statistics.discriminant.ShareScore;

/**
 * How one method did in the outer folds, on animals that neither fitted nor tuned it.
 *
 * @param method which
 * @param hits animals whose largest share was that of their own taxon; one that could not be judged
 *     is a miss
 * @param logScore mean natural log of the true taxon's share, floored at 1e-15; an animal that
 *     could not be judged counts as the floor
 * @param brier mean Σ(share − truth)²; an animal that could not be judged counts as 2, the worst
 */
public record MethodScore(Method method, Proportion hits, double logScore, double brier) {
  /** Whether the method could judge none of the animals: too few of some taxon, for instance. */
  public boolean judgedNone() {
    return hits.hits() == 0 && brier >= ShareScore.WORST_BRIER;
  }
}
