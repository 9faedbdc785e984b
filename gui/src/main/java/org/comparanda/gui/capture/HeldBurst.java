package org.comparanda.gui.capture;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.comparanda.capture.CaliperValue;
import org.comparanda.capture.LineEnd;

/**
 * A burst of a caliper that was read whole.
 *
 * @param burst as it came
 * @param values what it means
 */
record HeldBurst(String burst, List<CaliperValue> values) {
  HeldBurst {
    values = List.copyOf(values);
  }

  /** The value, where there is one alone. */
  Optional<CaliperValue> single() {
    return values.size() == 1 ? Optional.of(values.get(0)) : Optional.empty();
  }

  /** Whether it ended with the caliper's own Enter behind one value. */
  boolean goesOn() {
    return values.size() == 1 && LineEnd.of(burst) != LineEnd.NONE;
  }

  /** What the field shows of it. */
  String text() {
    return values.stream().map(CaliperValue::asTyped).collect(Collectors.joining("  "));
  }
}
