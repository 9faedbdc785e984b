package org.comparanda.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;

/**
 * A value is unlike what the other side and the rest of its bone let expect, and like it with two
 * neighbouring digits swapped.
 */
record SwappedDigits() implements ShelfCheck {
  /**
   * Twice the log of how much better the swapped number fits. One cell in a few hundred is a slip,
   * and a number has some three swaps: e⁸ to 1 outweighs that.
   */
  private static final double BETTER = 16;

  /** In standard deviations: what the swapped number must lie within, and where sources clash. */
  private static final double LIKE = 3.3;

  private static final double CONTRADICT = 4;

  /** How far a value lies from what is expected, natural logs. */
  private record Deviation(double size, double variance, double df) {
    double standardised(double shift) {
      return Math.abs(size - shift) / Math.sqrt(variance);
    }

    /** How much better it fits after the shift, by Student's t. */
    double gain(double shift) {
      return misfit(standardised(0)) - misfit(standardised(shift));
    }

    private double misfit(double z) {
      return (df + 1) * Math.log1p(z * z / df);
    }

    boolean clashes(Deviation other) {
      return Math.abs(size - other.size) > CONTRADICT * Math.sqrt(variance + other.variance);
    }

    Deviation and(Deviation other) {
      double weight = 1 / variance + 1 / other.variance;
      return new Deviation(
          (size / variance + other.size / other.variance) / weight, 1 / weight, df);
    }
  }

  @Override
  public FindingKind kind() {
    return FindingKind.SWAPPED_DIGITS;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    List<Finding> findings = new ArrayList<>();
    for (ElementSpread spread : entries.spreads().values()) {
      Map<String, List<BoneEntry>> animals =
          ShelfEntries.grouped(spread.bones(), BoneEntry::animal);
      for (BoneEntry bone : spread.bones()) {
        if (entries.stopped()) {
          return findings;
        }
        spread
            .judge(bone)
            .ifPresent(
                judged ->
                    judged
                        .values()
                        .forEach(
                            v -> value(bone, other(bone, animals), v).ifPresent(findings::add)));
      }
    }
    return findings;
  }

  private Optional<Finding> value(
      BoneEntry bone, Optional<BoneEntry> other, Judged.Expected expected) {
    MeasurementCode code = expected.code();
    double mm = bone.value(code);
    Deviation alone =
        new Deviation(expected.residual(), expected.variance(), expected.degreesOfFreedom());
    Optional<Deviation> fromOtherSide =
        other
            .flatMap(o -> Optional.ofNullable(o.values().get(code)))
            .flatMap(
                o ->
                    expected
                        .sideVariance()
                        .map(v -> new Deviation(Math.log(mm / o), v, alone.df())));
    if (fromOtherSide.filter(alone::clashes).isPresent()) {
      return Optional.empty(); // both sides say the same, so nobody mistyped one of them
    }
    Deviation deviation = fromOtherSide.map(alone::and).orElse(alone);
    return NeighbouringDigits.swapped(mm).stream()
        .min(Comparator.comparingDouble(m -> deviation.standardised(Math.log(mm / m))))
        .filter(m -> deviation.standardised(Math.log(mm / m)) < LIKE)
        .filter(m -> deviation.gain(Math.log(mm / m)) > BETTER)
        .map(
            m ->
                Finding.ofValue(
                        kind(),
                        bone,
                        code.value(),
                        mm,
                        "%s of %s is unlike the rest; with two digits swapped, %s, it is like it."
                            .formatted(code, Millimetres.number(mm), Millimetres.number(m)),
                        "Look at the card, or measure again.")
                    .correctedBy(Optional.of(Correction.Value.of(bone, code, m))));
  }

  private static Optional<BoneEntry> other(BoneEntry bone, Map<String, List<BoneEntry>> animals) {
    return SidesDiffer.SidePair.of(animals.getOrDefault(bone.animal(), List.of()))
        .map(pair -> bone.side() == Side.LEFT ? pair.right() : pair.left());
  }
}
