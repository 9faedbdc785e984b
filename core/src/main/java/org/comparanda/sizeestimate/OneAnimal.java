package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.ShelfBone;
import org.comparanda.statistics.Distributions;
import org.comparanda.taxon.TaxonName;

/**
 * Whether bones of one lot can be one animal by their size.
 *
 * <p>Two bones of different elements: the second's log size against the prediction interval of a
 * line on the first, within the shelf's animals. Left and right of one element: their log
 * difference against the shelf's left–right differences (not centred). The chance is multiplied by
 * the number of comparisons made for the pair; a pair below 0.01 is named. Common practice, no
 * source.
 *
 * <p>Keeps each line and each side's spread once it has been asked for, so that one of these serves
 * a table of any length; for one thread.
 */
public final class OneAnimal {
  private static final double LEVEL = 0.01;
  private static final int FEWEST = 10;

  private final SizeDesk desk;
  private final List<Animal> animals;
  private final Set<TaxonName> taxa;
  private final Map<SizeQuestion, Optional<FittedLine>> lines = new HashMap<>();
  private final Map<String, Optional<SideSpread>> sides = new HashMap<>();

  /** Root mean square of the log differences of left and right. */
  private record SideSpread(double log, int pairs) {}

  OneAnimal(SizeDesk desk, List<Animal> animals, Set<TaxonName> taxa) {
    this.desk = desk;
    this.animals = animals;
    this.taxa = Set.copyOf(taxa);
  }

  /** Pairs of these bones that can hardly be one animal. */
  public List<SizesDisagree> among(List<BoneInHand> bones) {
    List<SizesDisagree> found = new ArrayList<>();
    for (int i = 0; i < bones.size(); i++) {
      for (int j = i + 1; j < bones.size(); j++) {
        disagreement(bones.get(i), bones.get(j)).ifPresent(found::add);
      }
    }
    return found;
  }

  private Optional<SizesDisagree> disagreement(BoneInHand a, BoneInHand b) {
    List<Double> chances =
        a.element().equals(b.element())
            ? (a.side() == b.side() ? List.of() : acrossSides(a, b))
            : acrossElements(a, b);
    double smallest = chances.stream().mapToDouble(Double::doubleValue).min().orElse(1);
    double chance = Math.min(1, smallest * chances.size());
    return chance < LEVEL
        ? Optional.of(
            new SizesDisagree(
                a.id(),
                b.id(),
                chance,
                String.format(
                    Locale.ROOT,
                    "%s and %s differ more in size than bones of one animal on the shelf do"
                        + " (chance %.2g): they can hardly be one animal.",
                    a.id(),
                    b.id(),
                    chance)))
        : Optional.empty();
  }

  private List<Double> acrossElements(BoneInHand a, BoneInHand b) {
    List<Double> chances = new ArrayList<>();
    for (Map.Entry<MeasurementCode, Double> x : a.values().entrySet()) {
      for (Map.Entry<MeasurementCode, Double> y : b.values().entrySet()) {
        String from = a.element() + "." + x.getKey();
        SizeQuestion question =
            SizeQuestion.of(b.element() + "." + y.getKey(), from).withTaxa(taxa);
        lines
            .computeIfAbsent(question, q -> desk.line(q).value().filter(line -> line.n() >= FEWEST))
            .flatMap(line -> line.estimate(Map.of(from, x.getValue())).value())
            .flatMap(estimate -> chance(estimate, y.getValue()))
            .ifPresent(chances::add);
      }
    }
    return chances;
  }

  private static Optional<Double> chance(SizeEstimate estimate, double value) {
    return estimate
        .standardErrorOfNew()
        .value()
        .filter(se -> se > 0 && value > 0)
        .map(se -> bothTails((Math.log(value) - estimate.fit()) / se, estimate.degreesOfFreedom()));
  }

  private List<Double> acrossSides(BoneInHand a, BoneInHand b) {
    List<Double> chances = new ArrayList<>();
    for (Map.Entry<MeasurementCode, Double> mine : a.values().entrySet()) {
      MeasurementCode code = mine.getKey();
      Double other = b.values().get(code);
      if (other == null || other <= 0 || mine.getValue() <= 0) {
        continue;
      }
      double difference = Math.log(mine.getValue() / other);
      sides
          .computeIfAbsent(a.element() + "." + code, name -> spread(a, code))
          .ifPresent(s -> chances.add(bothTails(difference / s.log(), s.pairs())));
    }
    return chances;
  }

  private Optional<SideSpread> spread(BoneInHand like, MeasurementCode code) {
    double squares = 0;
    int pairs = 0;
    for (Animal animal : animals) {
      Optional<Double> left = of(animal, like, code, Side.LEFT);
      Optional<Double> right = of(animal, like, code, Side.RIGHT);
      if (left.isPresent() && right.isPresent()) {
        squares += Math.pow(Math.log(left.get() / right.get()), 2);
        pairs++;
      }
    }
    return pairs >= FEWEST && squares > 0
        ? Optional.of(new SideSpread(Math.sqrt(squares / pairs), pairs))
        : Optional.empty();
  }

  private Optional<Double> of(Animal animal, BoneInHand like, MeasurementCode code, Side side) {
    boolean asked = taxa.isEmpty() || animal.taxon().filter(taxa::contains).isPresent();
    return asked && animal.feedsFits()
        ? animal.bones().stream()
            .filter(ShelfBone::feedsFits)
            .filter(bone -> bone.element().equals(like.element()) && bone.side() == side)
            .flatMap(bone -> Optional.ofNullable(bone.values().get(code)).stream())
            .filter(value -> value > 0)
            .findFirst()
        : Optional.empty();
  }

  private static double bothTails(double t, int df) {
    return 2 * Distributions.tUpperTail(Math.abs(t), df);
  }
}
