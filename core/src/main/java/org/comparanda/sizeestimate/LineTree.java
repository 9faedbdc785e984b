package org.comparanda.sizeestimate;

import java.util.OptionalDouble;
import org.comparanda.statistics.phylo.PhyloLeastSquares;
import org.comparanda.statistics.phylo.PhyloTree;

/**
 * The tree that a line across taxa stands on.
 *
 * @param lambda λ where it is given; otherwise by maximum likelihood
 */
public record LineTree(PhyloTree tree, OptionalDouble lambda) {
  /** λ by maximum likelihood. */
  public static LineTree of(PhyloTree tree) {
    return new LineTree(tree, OptionalDouble.empty());
  }

  /** λ given, between 0 and 1. */
  public LineTree withLambda(double given) {
    return new LineTree(tree, OptionalDouble.of(given));
  }

  PhyloLeastSquares method() {
    return lambda.isPresent()
        ? PhyloLeastSquares.withDefaults().withLambda(lambda.getAsDouble())
        : PhyloLeastSquares.withDefaults();
  }
}
