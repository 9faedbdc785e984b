package org.comparanda.suggestion;

import java.util.Comparator;
import java.util.List;
import org.comparanda.statistics.Cholesky;

/** The comparative animals to open the drawer of. */
final class NearestList {
  private static final int MOST = 3;

  private NearestList() {}

  /** The three nearest by Mahalanobis distance with the plain spread; none where it is missing. */
  static List<NearestAnimal> of(Sample sample, int unit, BoneRow bone) {
    double[] x = sample.numbers(bone);
    return sample
        .momentsWithout(unit, Sample.Offer.ANIMAL)
        .spread()
        .then(Cholesky::of)
        .fold(spread -> nearest(sample, unit, spread, x), none -> List.of());
  }

  private static List<NearestAnimal> nearest(
      Sample sample, int unit, Cholesky spread, double... x) {
    return sample.animalsWithout(unit).stream()
        .map(a -> at(a, distance(spread, x, sample.numbers(a.mean()))))
        .sorted(
            Comparator.comparingDouble(NearestAnimal::distance)
                .thenComparing(NearestAnimal::animal))
        .limit(MOST)
        .toList();
  }

  private static NearestAnimal at(AnimalRow animal, double distance) {
    return new NearestAnimal(animal.animal(), animal.taxon(), animal.drawer(), distance);
  }

  private static double distance(Cholesky spread, double[] x, double... other) {
    double[] away = new double[x.length];
    for (int j = 0; j < x.length; j++) {
      away[j] = x[j] - other[j];
    }
    return Math.sqrt(spread.squaredDistance(away));
  }
}
