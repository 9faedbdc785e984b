package org.comparanda.statistics.discriminant;

import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;

/**
 * Nearest neighbours: the groups of the k nearest rows vote, each vote worth prior ÷ (rows of the
 * group ÷ all rows), so that priors by counts give a plain vote.
 *
 * <p>Rows as near as the k-th all vote. Distances are Euclidean. Source: Cover and Hart 1967, IEEE
 * Trans. Inf. Theory 13:21–27. Needs k rows.
 *
 * @param scaling what is done to the columns first
 */
public record Nearest(int neighbours, Scaling scaling) implements Discriminant {
  /** What is done to the columns before distances are taken. */
  public enum Scaling {
    /** As they are. */
    NONE,
    /** Divided by the standard deviation over all rows (divisor n − 1): units do not matter. */
    STANDARD
  }

  /** Two distances that differ by less than this part of the distance are alike. */
  private static final double ALIKE = 1e-9;

  public Nearest {
    if (neighbours < 1) {
      throw new IllegalArgumentException("At least one neighbour is needed, not " + neighbours);
    }
  }

  /** Five neighbours on standardised columns. */
  public static Nearest withDefaults() {
    return new Nearest(5, Scaling.STANDARD);
  }

  public Nearest withNeighbours(int count) {
    return new Nearest(count, scaling);
  }

  public Nearest withScaling(Scaling other) {
    return new Nearest(neighbours, other);
  }

  @Override
  public String name() {
    return neighbours == 1 ? "nearest-one" : "nearest";
  }

  @Override
  public Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors) {
    if (rows.rows() < neighbours) {
      return Outcome.none(
          "%d animals are fewer than %d neighbours.".formatted(rows.rows(), neighbours),
          "Ask for fewer neighbours, or add animals.");
    }
    double[] deviations = deviations(rows);
    if (IntStream.range(0, rows.columns()).anyMatch(j -> !(deviations[j] > 0))) {
      return Outcome.none("A measurement is the same in all animals.", "Leave it out.");
    }
    return priors
        .among(rows.groups(), rows::count)
        .then(checked -> Outcome.of(row -> vote(rows, deviations, priors, row)));
  }

  private Shares vote(GroupedRows rows, double[] deviations, Priors priors, double[] row) {
    double[] x = Vectors.quotient(Vectors.checked(rows.columns(), row), deviations);
    double[] distances = new double[rows.rows()];
    for (int i = 0; i < distances.length; i++) {
      double[] other = Vectors.quotient(rows.row(i), deviations);
      distances[i] = Math.sqrt(Vectors.squaredDistance(x, other));
    }
    double reach =
        IntStream.range(0, distances.length)
            .filter(i -> priors.of(rows.group(i)) > 0)
            .mapToDouble(i -> distances[i])
            .sorted()
            .limit(neighbours)
            .max()
            .orElseThrow();
    double[] logVotes = new double[rows.groups()];
    for (int g = 0; g < logVotes.length; g++) {
      double votes = 0;
      for (int i = 0; i < distances.length; i++) {
        votes += rows.group(i) == g && distances[i] <= reach * (1 + ALIKE) ? 1 : 0;
      }
      logVotes[g] = votes == 0 ? Double.NEGATIVE_INFINITY : Math.log(votes / rows.count(g));
    }
    return Shares.of(priors, logVotes);
  }

  private double[] deviations(GroupedRows rows) {
    double[] mean = Vectors.mean(rows.columns(), rows.vectors());
    double[] deviations = new double[rows.columns()];
    for (int j = 0; j < deviations.length; j++) {
      double sum = 0;
      for (double[] row : rows.vectors()) {
        sum += (row[j] - mean[j]) * (row[j] - mean[j]);
      }
      deviations[j] = scaling == Scaling.NONE ? 1 : Math.sqrt(sum / (rows.rows() - 1.0));
    }
    return deviations;
  }
}
