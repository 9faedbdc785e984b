package org.comparanda.statistics.discriminant;

import org.comparanda.statistics.Outcome;

/** A method that needs moments only, so that trials and subsets need no second look at the rows. */
public interface MomentDiscriminant extends Discriminant {
  /** Fits to the moments; the same as fitting to the rows that they are of. */
  Outcome<DiscriminantModel> fitMoments(GroupMoments moments, Priors priors);

  @Override
  default Outcome<DiscriminantModel> fit(GroupedRows rows, Priors priors) {
    return fitMoments(GroupMoments.of(rows), priors);
  }

  @Override
  default Outcome<DiscriminantModel> fitWithout(
      int unit, GroupedRows rows, GroupMoments left, Priors priors) {
    return fitMoments(left, priors);
  }
}
