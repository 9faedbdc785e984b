package org.comparanda.stock;

import java.util.SplittableRandom;

/** One draw of where the true means lie, and of a new bone of each taxon. */
final class ScoreDraw {
  /** No taxon gets more animals. */
  static final int NOBODY = -1;

  private final TaxonMeans means;
  private final int more;
  private final double[][] truth;
  private final double[][] bones;
  private final double[][] noise;

  ScoreDraw(TaxonMeans means, int more, SplittableRandom random) {
    this.means = means;
    this.more = more;
    int taxa = means.taxa().size();
    int p = means.measurements();
    truth = new double[taxa][p];
    bones = new double[taxa][p];
    noise = new double[taxa][p];
    for (int t = 0; t < taxa; t++) {
      for (int j = 0; j < p; j++) {
        truth[t][j] = means.mean(t, j) + random.nextGaussian() / Math.sqrt(means.animals(t));
        bones[t][j] = truth[t][j] + random.nextGaussian();
        noise[t][j] = random.nextGaussian() / Math.sqrt(more);
      }
    }
  }

  /** Mean log share of the true taxon when one taxon, or {@link #NOBODY}, has more animals. */
  double score(int richer) {
    double sum = 0;
    int taxa = bones.length;
    for (int t = 0; t < taxa; t++) {
      double[] densities = new double[taxa];
      double largest = Double.NEGATIVE_INFINITY;
      for (int g = 0; g < taxa; g++) {
        densities[g] = logDensity(g, bones[t], richer);
        largest = Math.max(largest, densities[g]);
      }
      double total = 0;
      for (double d : densities) {
        total += Math.exp(d - largest);
      }
      sum += densities[t] - largest - Math.log(total);
    }
    return sum / taxa;
  }

  /** The predictive density of the small-sample discriminant, up to a constant. */
  private double logDensity(int taxon, double[] bone, int richer) {
    int p = bone.length;
    int added = taxon == richer ? more : 0;
    double n = means.animals(taxon) + added;
    double df = means.degreesOfFreedom() + (richer == NOBODY ? 0 : more);
    double squared = 0;
    for (int j = 0; j < p; j++) {
      double mean =
          (means.animals(taxon) * means.mean(taxon, j)
                  + added * (truth[taxon][j] + noise[taxon][j]))
              / n;
      squared += (bone[j] - mean) * (bone[j] - mean);
    }
    return -0.5 * p * Math.log1p(1 / n) - 0.5 * (df + 1) * Math.log1p(n * squared / ((n + 1) * df));
  }
}
