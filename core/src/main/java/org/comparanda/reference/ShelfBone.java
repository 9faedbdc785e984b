package org.comparanda.reference;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;

/**
 * One measured bone of a comparative animal.
 *
 * <p>Shape: one value per measurement, the mean of its accepted takes; a measurement that was not
 * taken is absent. Units: mm for measurements of the protocol, the table's own unit for plain
 * numbers. Errors: {@link IllegalArgumentException} if a value is not finite.
 */
public record ShelfBone(
    ElementKey element,
    Side side,
    Portion portion,
    Set<Flag> flags,
    Map<MeasurementCode, Double> values) {
  public ShelfBone {
    flags = Set.copyOf(flags);
    for (Map.Entry<MeasurementCode, Double> value : values.entrySet()) {
      if (!Double.isFinite(value.getValue())) {
        throw new IllegalArgumentException(value.getKey() + " is not a finite number.");
      }
    }
    values = java.util.Collections.unmodifiableMap(new TreeMap<>(values));
  }

  /** Whether this bone may feed a fit. */
  public boolean feedsFits() {
    return flags.stream().noneMatch(Flag::keepsOutOfFits);
  }
}
