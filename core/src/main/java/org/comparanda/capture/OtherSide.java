package org.comparanda.capture;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.Side;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.SideTolerance;

/**
 * The bone of the other side, measured beside the one in hand.
 *
 * @param side which it is
 * @param passes where its measuring stands
 * @param recorded values that stand for it, mm, where nothing was read of it
 * @param tolerance how far the two may differ
 */
public record OtherSide(
    Side side, Passes passes, Map<MeasurementCode, Double> recorded, SideTolerance tolerance) {
  public OtherSide {
    recorded = Collections.unmodifiableMap(new TreeMap<>(recorded));
  }

  /** A bone of which only readings are known. */
  public OtherSide(Side side, Passes passes, SideTolerance tolerance) {
    this(side, passes, Map.of(), tolerance);
  }

  /**
   * Its value of a measurement, mm: the mean of its takes in this pass, or the value that counts
   * once it is done. Takes of another pass stay hidden, as on that bone itself.
   */
  public Optional<Double> mm(Place place) {
    if (passes.counting(place.code()).isEmpty()) {
      return Optional.ofNullable(recorded.get(place.code()));
    }
    if (passes.complete()) {
      return Optional.ofNullable(passes.values().get(place.code()));
    }
    List<Double> takes =
        passes.counting(place.code()).stream()
            .filter(row -> row.pass() == place.pass())
            .flatMap(row -> row.length().stream())
            .map(Length::mm)
            .toList();
    return takes.isEmpty()
        ? Optional.empty()
        : Optional.of(takes.stream().mapToDouble(mm -> mm).sum() / takes.size());
  }
}
