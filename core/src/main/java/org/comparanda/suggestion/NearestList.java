package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Cholesky;
import org.comparanda.statistics.discriminant.GroupMoments;

/** The comparative animals to open the drawer of. */
final class NearestList {
  private static final int MOST = 3;

  private final Sample sample;
  private final GroupMoments moments;
  private final BoneRow bone;
  private final Map<List<MeasurementCode>, Optional<Reach>> reaches = new HashMap<>();
  private final List<NearestAnimal> nearest = new ArrayList<>();

  /** From the bone in hand, on some of its measurements, to others with the spread of these. */
  private static final class Reach {
    private final Cholesky spread;
    private final double[] from;
    private final double times;

    Reach(Cholesky spread, double[] from, double times) {
      this.spread = spread;
      this.from = from;
      this.times = times;
    }

    double to(double... other) {
      double[] away = new double[from.length];
      for (int j = 0; j < away.length; j++) {
        away[j] = from[j] - other[j];
      }
      return Math.sqrt(spread.squaredDistance(away) * times);
    }
  }

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
    if (fit.filled().isPresent()) {
      fit.animals().forEach(list::offer);
    } else {
      list.reach(fit.sample().set())
          .ifPresent(
              reach -> fit.sample().eachWithout(fit.unit(), (a, x) -> list.offer(a, reach.to(x))));
    }
    return List.copyOf(list.nearest);
  }

  private void offer(AnimalRow animal) {
    List<MeasurementCode> part = animal.mean().partOf(sample.set());
    reach(part).ifPresent(reach -> offer(animal, reach.to(numbers(part, animal.mean()))));
  }

  /** Keeps an animal if it is among the nearest so far; of equals the one offered first. */
  private void offer(AnimalRow animal, double distance) {
    int place = nearest.size();
    while (place > 0 && nearest.get(place - 1).distance() > distance) {
      place--;
    }
    if (place < MOST) {
      nearest.add(
          place, new NearestAnimal(animal.animal(), animal.taxon(), animal.drawer(), distance));
    }
    if (nearest.size() > MOST) {
      nearest.remove(MOST);
    }
  }

  private Optional<Reach> reach(List<MeasurementCode> part) {
    return reaches.computeIfAbsent(part, this::reachAfresh);
  }

  private Optional<Reach> reachAfresh(List<MeasurementCode> part) {
    GroupMoments marginal =
        part.equals(sample.set())
            ? moments
            : moments.forColumns(part.stream().mapToInt(sample.set()::indexOf).toArray());
    double times = (double) sample.set().size() / part.size();
    return marginal
        .pooledCovariance()
        .then(Cholesky::of)
        .value()
        .map(spread -> new Reach(spread, numbers(part, bone), times));
  }

  private double[] numbers(List<MeasurementCode> part, BoneRow row) {
    return part.equals(sample.set()) ? sample.numbers(row) : row.vector(part);
  }
}
