package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.measurement.LengthUnit;

/**
 * Whether a column looks as if it were in another unit than the one taken for it. Two signs: more
 * than half of its values (so its median) lie below or above the usual range and another unit would
 * bring them in; or it stands apart from its sibling columns by the factor of another unit, each
 * seen against its own usual middle.
 */
final class UnitSuspicion {
  private static final int KEPT = 1 << 14;
  private static final double APART = Math.log(5); // siblings of one animal differ by far less
  private static final double NEAR = Math.log(2);

  private final TableColumn column;
  private final Map<LengthUnit, Long> broughtIn = new EnumMap<>(LengthUnit.class);
  private double[] offsets = new double[64];
  private int kept;
  private long seen;
  private long everyNth = 1;
  private long outside;
  private String source = "";

  UnitSuspicion(TableColumn column) {
    this.column = column;
  }

  TableColumn column() {
    return column;
  }

  void saw(double value, UsualRange range) {
    source = range.source();
    double mm = value * column.unit().factor();
    if (!range.holds(mm)) {
      outside++;
      for (LengthUnit unit : LengthUnit.values()) {
        if (range.holds(value * unit.millimetres())) {
          broughtIn.merge(unit, 1L, Long::sum);
        }
      }
    }
    if (mm > 0 && seen % everyNth == 0) {
      keep(Math.log(mm / range.middle()));
    }
    seen++;
  }

  private void keep(double offset) {
    if (kept == KEPT) { // every second one goes, from now on half as many come
      for (int i = 0; i < KEPT / 2; i++) {
        offsets[i] = offsets[2 * i];
      }
      kept = KEPT / 2;
      everyNth *= 2;
    }
    if (kept == offsets.length) {
      offsets = Arrays.copyOf(offsets, 2 * kept);
    }
    offsets[kept++] = offset;
  }

  /** The unit it looks like, with the reason in words. */
  Optional<Doubt> against(List<UnitSuspicion> all) {
    if (seen == 0) {
      return Optional.empty();
    }
    return byRange().or(() -> bySiblings(all));
  }

  /** What a column looks like, and why. */
  record Doubt(LengthUnit unit, String reason) {}

  private Optional<Doubt> byRange() {
    if (2 * outside <= seen) {
      return Optional.empty();
    }
    return broughtIn.entrySet().stream()
        .filter(e -> 2 * e.getValue() > seen)
        .min(Comparator.comparingDouble(e -> Math.abs(median() + shift(e.getKey()))))
        .map(e -> new Doubt(e.getKey(), "most of its values lie outside " + source));
  }

  private Optional<Doubt> bySiblings(List<UnitSuspicion> all) {
    List<Double> others = new ArrayList<>();
    for (UnitSuspicion other : all) {
      if (other != this && other.seen > 0) {
        others.add(other.median());
      }
    }
    if (others.isEmpty()) {
      return Optional.empty();
    }
    double usual = middle(others);
    double apart = median() - usual;
    if (Math.abs(apart) < APART || Math.abs(median()) < Math.abs(usual)) {
      return Optional.empty();
    }
    return Arrays.stream(LengthUnit.values())
        .filter(unit -> Math.abs(apart + shift(unit)) < NEAR)
        .min(Comparator.comparingDouble(unit -> Math.abs(apart + shift(unit))))
        .map(unit -> new Doubt(unit, "against the other columns it is out of scale"));
  }

  private double shift(LengthUnit unit) {
    return Math.log(unit.millimetres() / column.unit().factor());
  }

  private double median() {
    double[] sorted = Arrays.copyOf(offsets, kept);
    Arrays.sort(sorted);
    return kept == 0 ? 0 : sorted[kept / 2];
  }

  private static double middle(List<Double> values) {
    values.sort(Comparator.naturalOrder());
    return values.get(values.size() / 2);
  }
}
