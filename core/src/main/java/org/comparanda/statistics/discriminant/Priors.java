package org.comparanda.statistics.discriminant;

import java.util.Collections;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;

/**
 * Prior weights of the groups, always with their name, summing to 1.
 *
 * <p>They stay as given when a unit is held out, and when a group is empty its share falls to the
 * others. Errors: {@link IllegalArgumentException} for a negative weight or if all are zero.
 *
 * @param name as shown with every answer, for instance "equal"
 * @param weights one for each group; scaled to sum 1
 */
public record Priors(String name, List<Double> weights) {
  public Priors {
    double sum = weights.stream().mapToDouble(Double::doubleValue).sum();
    if (!(sum > 0) || weights.stream().anyMatch(w -> !(w >= 0 && w < Double.POSITIVE_INFINITY))) {
      throw new IllegalArgumentException(
          "Prior weights must be 0 or more, one above 0: " + weights);
    }
    weights = weights.stream().map(w -> w / sum).toList();
  }

  /** The same weight for every group. */
  public static Priors equal(int groups) {
    return new Priors("equal", Collections.nCopies(groups, 1.0 / groups));
  }

  /** By the number of rows of each group. */
  public static Priors counts(GroupedRows rows) {
    return new Priors(
        "counts", IntStream.range(0, rows.groups()).mapToObj(g -> (double) rows.count(g)).toList());
  }

  /** These priors, or why they say nothing: no group that has rows has a weight above 0. */
  Outcome<Priors> among(int groups, IntUnaryOperator rowsOfGroup) {
    if (groups != weights.size()) {
      throw new IllegalArgumentException(weights.size() + " priors for " + groups + " groups");
    }
    return IntStream.range(0, groups).anyMatch(g -> rowsOfGroup.applyAsInt(g) > 0 && of(g) > 0)
        ? Outcome.of(this)
        : Outcome.none(
            "No group that has animals has a prior above 0.", "Change the priors, or add animals.");
  }

  public double of(int group) {
    return weights.get(group);
  }
}
