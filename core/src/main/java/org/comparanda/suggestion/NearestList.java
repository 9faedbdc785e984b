package org.comparanda.suggestion;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.GroupMoments;

/** The comparative animals to open the drawer of. */
final class NearestList {
  private static final int MOST = 3;

  private final Sample sample;
  private final GroupMoments moments;
  private final BoneRow bone;
  private final Map<List<MeasurementCode>, Outcome<Cholesky>> spreads = new HashMap<>();

  private NearestList(Sample sample, GroupMoments moments, BoneRow bone) {
    this.sample = sample;
    this.moments = moments;
    this.bone = bone;
  }

  /**
   * The three nearest by Mahalanobis distance with the plain spread; none where it is missing. An
   * animal with q of p measurements is judged on those, its squared distance times p / q.
   */
  static List<NearestAnimal> of(Fit fit, BoneRow bone) {
    GroupMoments moments =
        fit.filled()
            .map(Filled::moments)
            .orElseGet(() -> fit.sample().momentsWithout(fit.unit(), Sample.Offer.ANIMAL));
    NearestList list = new NearestList(fit.sample(), moments, bone);
    return fit.animals().stream()
        .flatMap(a -> list.at(a).stream())
        .sorted(
            Comparator.comparingDouble(NearestAnimal::distance)
                .thenComparing(NearestAnimal::animal))
        .limit(MOST)
        .toList();
  }

  private Optional<NearestAnimal> at(AnimalRow animal) {
    List<MeasurementCode> part = animal.mean().partOf(sample.set());
    return spreads
        .computeIfAbsent(part, this::spread)
        .value()
        .map(
            spread ->
                new NearestAnimal(
                    animal.animal(),
                    animal.taxon(),
                    animal.drawer(),
                    distance(spread, part, animal)));
  }

  private Outcome<Cholesky> spread(List<MeasurementCode> part) {
    GroupMoments marginal =
        part.equals(sample.set())
            ? moments
            : moments.forColumns(part.stream().mapToInt(sample.set()::indexOf).toArray());
    return marginal.pooledCovariance().then(Cholesky::of);
  }

  private double distance(Cholesky spread, List<MeasurementCode> part, AnimalRow animal) {
    double[] x = numbers(part, bone);
    double[] other = numbers(part, animal.mean());
    double[] away = IntStream.range(0, x.length).mapToDouble(j -> x[j] - other[j]).toArray();
    return Math.sqrt(spread.squaredDistance(away) * sample.set().size() / part.size());
  }

  private double[] numbers(List<MeasurementCode> part, BoneRow row) {
    return part.equals(sample.set()) ? sample.numbers(row) : row.vector(part);
  }
}
