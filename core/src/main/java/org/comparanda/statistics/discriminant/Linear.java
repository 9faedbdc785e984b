package org.comparanda.statistics.discriminant;

import org.comparanda.statistics.Outcome;

/**
 * Linear discriminant with the pooled covariance W: share ∝ prior · exp(−D²/2), the estimates
 * plugged in as if they were known. Source: Fisher 1936, Ann. Eugenics 7:179–188; McLachlan 1992.
 */
public record Linear() implements MomentDiscriminant {
  @Override
  public String name() {
    return "linear";
  }

  @Override
  public Outcome<DiscriminantModel> fitMoments(GroupMoments moments, Priors priors) {
    return PooledModel.of(moments, priors, PooledModel.LogDensity.normal());
  }
}
