package org.comparanda.suggestion;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;

/** One bone as numbers on the scale of the comparison; a measurement that it lacks is absent. */
record BoneRow(Side side, Map<MeasurementCode, Double> values) {
  BoneRow {
    values = Map.copyOf(values);
  }

  boolean has(List<MeasurementCode> set) {
    return values.keySet().containsAll(set);
  }

  /** The part of the set that this bone has, in the order of the set. */
  List<MeasurementCode> partOf(List<MeasurementCode> set) {
    return set.stream().filter(values::containsKey).toList();
  }

  /** The values of the set, all of which it must have. */
  double[] vector(List<MeasurementCode> set) {
    return set.stream().mapToDouble(code -> values.getOrDefault(code, Double.NaN)).toArray();
  }

  /** The mean of several bones per measurement, over the bones that have it; side of the first. */
  static BoneRow mean(List<BoneRow> bones) {
    Map<MeasurementCode, Double> sums = new TreeMap<>();
    Map<MeasurementCode, Integer> counts = new TreeMap<>();
    for (BoneRow bone : bones) {
      bone.values.forEach(
          (code, value) -> {
            sums.merge(code, value, Double::sum);
            counts.merge(code, 1, Integer::sum);
          });
    }
    sums.replaceAll((code, sum) -> sum / counts.getOrDefault(code, 1));
    return new BoneRow(bones.get(0).side(), sums);
  }
}
