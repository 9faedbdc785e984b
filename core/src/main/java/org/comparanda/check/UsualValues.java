package org.comparanda.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.taxon.TaxonName;

/**
 * What a value of one element usually is, in natural logs, by medians that up to half of the rows
 * can't spoil: by the taxon where it has animals enough and varies little, otherwise by the usual
 * proportions to the other values of the bone.
 */
final class UsualValues {
  private static final int ENOUGH = 4;
  private static final double GROWS_WIDELY = 0.25; // one standard deviation, about a quarter
  private static final double NORMAL_DEVIATIONS = 1.4826; // of a median absolute deviation

  private record InTaxon(TaxonName taxon, MeasurementCode code) {}

  private record Pair(MeasurementCode code, MeasurementCode other) {}

  private final Map<InTaxon, List<Double>> ofTaxon = new HashMap<>();
  private final Map<Pair, List<Double>> proportions = new HashMap<>();
  private final Map<InTaxon, Optional<Double>> taxonMedians = new HashMap<>();
  private final Map<Pair, Optional<Double>> proportionMedians = new HashMap<>();

  /** From the bones of one element. */
  UsualValues(List<BoneEntry> bones) {
    for (BoneEntry bone : bones) {
      bone.values().forEach((code, mm) -> take(bone, code, mm));
    }
  }

  private void take(BoneEntry bone, MeasurementCode code, double mm) {
    if (!(mm > 0)) {
      return;
    }
    bone.taxon()
        .ifPresent(
            t ->
                ofTaxon
                    .computeIfAbsent(new InTaxon(t, code), k -> new ArrayList<>())
                    .add(Math.log(mm)));
    bone.values()
        .forEach(
            (other, otherMm) -> {
              if (!other.equals(code) && otherMm > 0) {
                proportions
                    .computeIfAbsent(new Pair(code, other), k -> new ArrayList<>())
                    .add(Math.log(mm / otherMm));
              }
            });
  }

  /** Natural log of the usual value; empty where nothing says it. */
  Optional<Double> usual(BoneEntry bone, MeasurementCode code) {
    return bone.taxon().flatMap(t -> byTaxon(new InTaxon(t, code))).or(() -> byRest(bone, code));
  }

  private Optional<Double> byTaxon(InTaxon key) {
    return taxonMedians.computeIfAbsent(
        key,
        k -> {
          List<Double> logs = ofTaxon.getOrDefault(k, List.of());
          if (logs.size() < ENOUGH) {
            return Optional.empty();
          }
          double middle = median(logs);
          double spread =
              NORMAL_DEVIATIONS * median(logs.stream().map(x -> Math.abs(x - middle)).toList());
          return spread < GROWS_WIDELY ? Optional.of(middle) : Optional.empty();
        });
  }

  private Optional<Double> byRest(BoneEntry bone, MeasurementCode code) {
    List<Double> said = new ArrayList<>();
    bone.values()
        .forEach(
            (other, mm) -> {
              if (!other.equals(code) && mm > 0) {
                proportion(new Pair(code, other)).ifPresent(r -> said.add(Math.log(mm) + r));
              }
            });
    return said.size() < 2 ? Optional.empty() : Optional.of(median(said));
  }

  private Optional<Double> proportion(Pair key) {
    return proportionMedians.computeIfAbsent(
        key,
        k -> {
          List<Double> logs = proportions.getOrDefault(k, List.of());
          return logs.size() < ENOUGH ? Optional.empty() : Optional.of(median(logs));
        });
  }

  static double median(List<Double> values) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    int n = sorted.size();
    return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
  }
}
