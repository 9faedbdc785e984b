package org.comparanda.statistics.discriminant;

import org.comparanda.statistics.Outcome;

/** A method whose shares follow from the squared distances in units of the plain spread alone. */
public interface PlainSpread extends MomentDiscriminant {
  /** How likely a squared distance is, by what the moments rest on: p and n − k. */
  LogDensity density(int columns, int degreesOfFreedom);

  @Override
  default Outcome<DiscriminantModel> fitMoments(GroupMoments moments, Priors priors) {
    return PooledModel.of(moments, priors, density(moments.columns(), moments.degreesOfFreedom()));
  }
}
