package org.comparanda.capture.warning;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.Side;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.CaliperValue;
import org.comparanda.capture.OtherSide;
import org.comparanda.capture.Passes;
import org.comparanda.capture.Place;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PartRule;
import org.comparanda.reference.SideTolerance;

/**
 * A value in the field, not accepted yet, and what it can be held against. Lengths in mm.
 *
 * @param measurement what is being measured
 * @param value what was typed or sent
 * @param shelf what the animals of the shelf show
 * @param others values of the other measurements of this bone so far
 * @param takesMm earlier takes of this measurement in earlier passes
 * @param neighbours the measurements before and after this one in the protocol
 * @param partRules which part is never longer than which whole, for this element
 * @param card the caliper in hand
 * @param beside the other side's value of this measurement, where both sides are measured together
 */
public record Entry(
    Measurement measurement,
    CaliperValue value,
    ShelfRanges shelf,
    Map<MeasurementCode, Double> others,
    List<Double> takesMm,
    List<MeasurementCode> neighbours,
    List<PartRule> partRules,
    Optional<CaliperCard> card,
    Optional<Beside> beside) {
  /** The other side's value, mm, and how far the two may differ. */
  public record Beside(Side side, double mm, SideTolerance tolerance) {}

  public Entry {
    others = java.util.Collections.unmodifiableMap(new TreeMap<>(others));
    takesMm = List.copyOf(takesMm);
    neighbours = List.copyOf(neighbours);
    partRules = List.copyOf(partRules);
  }

  /**
   * A value in the current field of these passes; empty when no field waits for one.
   *
   * @param partRules the rules of the element
   */
  public static Optional<Entry> of(
      Passes passes,
      CaliperValue value,
      ShelfRanges shelf,
      List<PartRule> partRules,
      Optional<CaliperCard> card) {
    return passes
        .current()
        .map(
            place -> {
              List<Measurement> all = passes.measurements();
              Measurement here = passes.measurement(place.code());
              int at = all.indexOf(here);
              Map<MeasurementCode, Double> others = new TreeMap<>(passes.values());
              others.remove(place.code());
              return new Entry(
                  here,
                  value,
                  shelf,
                  others,
                  passes.counting(place.code()).stream()
                      .filter(row -> row.pass() < place.pass())
                      .flatMap(row -> row.length().stream())
                      .map(Length::mm)
                      .toList(),
                  all.subList(Math.max(0, at - 1), Math.min(all.size(), at + 2)).stream()
                      .filter(m -> !m.equals(here))
                      .map(Measurement::code)
                      .toList(),
                  partRules,
                  card,
                  Optional.empty());
            });
  }

  /** The same value beside the other bone of a pair. */
  public Entry withOtherSide(OtherSide other, Place place) {
    return new Entry(
        measurement,
        value,
        shelf,
        others,
        takesMm,
        neighbours,
        partRules,
        card,
        other.mm(place).map(mm -> new Beside(other.side(), mm, other.tolerance())));
  }

  double mm() {
    return value.length().mm();
  }

  MeasurementCode code() {
    return measurement.code();
  }

  /** The range of the shelf, when the value lies outside it. */
  Optional<Measurement.Range> rangeMissed() {
    return shelf.of(code()).filter(range -> mm() < range.lowMm() || mm() > range.highMm());
  }
}
