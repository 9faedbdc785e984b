package org.comparanda.capture;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Reading;

/**
 * The rows of one bone that count: those that were neither withdrawn nor replaced by a later one. A
 * row that a withdrawn one had replaced counts again.
 *
 * @param rows in the order of the log
 */
public record Takes(List<Reading> rows) {
  public Takes {
    rows = List.copyOf(rows);
  }

  /** The rows of a bone's log that count, as long as it is taken for this element. */
  public static Takes of(ElementKey element, List<Reading> log) {
    Set<Long> withdrawn = new HashSet<>();
    for (Reading row : log) {
      if (row.kind() == Reading.Kind.WITHDRAWAL) {
        row.pointsAt().ifPresent(withdrawn::add);
      }
    }
    Set<Long> replaced = new HashSet<>();
    for (Reading row : log) {
      if (row.kind() != Reading.Kind.WITHDRAWAL && !withdrawn.contains(row.id())) {
        row.pointsAt().ifPresent(replaced::add);
      }
    }
    return new Takes(
        log.stream()
            .filter(row -> row.element().equals(element))
            .filter(row -> row.kind() != Reading.Kind.WITHDRAWAL)
            .filter(row -> !withdrawn.contains(row.id()) && !replaced.contains(row.id()))
            .toList());
  }

  List<Reading> at(Place place) {
    return rows.stream()
        .filter(row -> row.code().equals(place.code()) && row.pass() == place.pass())
        .toList();
  }

  Optional<Reading> last() {
    return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(rows.size() - 1));
  }

  /** Mean of two or median of more of all takes of a field, mm. */
  public Optional<Double> value(MeasurementCode code) {
    return middle(lengths(rows.stream().filter(row -> row.code().equals(code)).toList()));
  }

  Optional<Double> value(Place place) {
    return middle(lengths(at(place)));
  }

  /** Whether the first two passes differ by more than the protocol allows. */
  boolean beyondTolerance(Measurement measurement) {
    Optional<Double> first = value(new Place(measurement.code(), 1));
    Optional<Double> second = value(new Place(measurement.code(), 2));
    return first.isPresent()
        && second.isPresent()
        && beyond(first.get(), second.get(), measurement.tolerance());
  }

  /** Whether two takes differ by more than this part of their mean. */
  static boolean beyond(double mm, double otherMm, double tolerance) {
    return Math.abs(mm - otherMm) > tolerance * (mm + otherMm) / 2;
  }

  private static List<Double> lengths(List<Reading> rows) {
    return rows.stream().flatMap(row -> row.length().stream()).map(Length::mm).sorted().toList();
  }

  private static Optional<Double> middle(List<Double> sorted) {
    int n = sorted.size();
    if (n == 0) {
      return Optional.empty();
    }
    return Optional.of((sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2);
  }
}
