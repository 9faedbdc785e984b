package org.comparanda.capture;

import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.LengthUnit;

/**
 * Learning a caliper's card from five test readings of any small thing. What is learned: unit
 * (where it is sent), decimal mark, decimals, line end, smallest step.
 */
public sealed interface CardLesson {
  /** How many test readings a lesson takes. */
  int READINGS = 5;

  /** The card; reach and last check are still to be filled in. */
  record Learned(CaliperCard card) implements CardLesson {}

  /** Why not, and what to do. */
  record NotLearned(String reason) implements CardLesson {}

  /**
   * Learns from the bursts as they came, line ends included.
   *
   * @param name name of the caliper in the room
   * @param serial number on it, may be empty
   * @param display unit that its display shows; asked from the person
   */
  static CardLesson from(String name, String serial, LengthUnit display, List<String> bursts) {
    if (bursts.size() != READINGS) {
      return new NotLearned(
          READINGS + " test readings are needed, there are " + bursts.size() + ".");
    }
    List<OneValue> values = new ArrayList<>();
    for (String burst : bursts) {
      String line = burst.strip();
      Optional<OneValue> value = OneValue.at(line, 0).filter(v -> v.end() == line.length());
      if (value.isEmpty() || value.get().isFraction()) {
        return new NotLearned(
            "\"" + line + "\" is not one value with decimals. Take the test reading again.");
      }
      values.add(value.get());
    }
    return fromValues(name, serial, display, bursts, values);
  }

  private static CardLesson fromValues(
      String name, String serial, LengthUnit display, List<String> bursts, List<OneValue> values) {
    Set<String> marks = values.stream().map(OneValue::mark).collect(Collectors.toSet());
    marks.remove("");
    if (marks.size() > 1) {
      return new NotLearned("Point and comma both came. Take the five test readings again.");
    }
    Set<LineEnd> ends = bursts.stream().map(LineEnd::of).collect(Collectors.toSet());
    if (ends.size() > 1) {
      return new NotLearned("The line ends differ. Take the five test readings again.");
    }
    Set<String> units = values.stream().map(OneValue::unit).collect(Collectors.toSet());
    LengthUnit sent = values.get(0).unit().isEmpty() ? display : values.get(0).unitSent();
    if (units.size() > 1 || sent != display) {
      return new NotLearned(
          "The values say another unit than the display (" + display.symbol() + "). Look at it.");
    }
    IntSummaryStatistics decimals =
        values.stream().mapToInt(value -> value.after().length()).summaryStatistics();
    char mark = marks.contains(",") ? ',' : '.';
    CaliperCard card =
        new CaliperCard(
            name,
            serial,
            display,
            mark,
            decimals.getMin(),
            decimals.getMax(),
            ends.iterator().next(),
            Length.of(step(values, decimals.getMax()), display),
            Optional.empty(),
            Optional.empty());
    return bursts.stream()
        .map(CaliperText.with(card)::burst)
        .flatMap(
            input ->
                input
                    .<Optional<String>>fold(r -> Optional.empty(), r -> Optional.of(r.reason()))
                    .stream())
        .findFirst()
        .<CardLesson>map(NotLearned::new)
        .orElse(new Learned(card));
  }

  /**
   * One of the last decimal; five of it when all readings end in 0 or 5 (by chance 3 in 10,000).
   */
  private static double step(List<OneValue> values, int decimals) {
    boolean fives =
        values.stream()
            .allMatch(
                v ->
                    v.after().length() < decimals
                        || v.after().endsWith("0")
                        || v.after().endsWith("5"));
    return (fives && decimals > 0 ? 5 : 1) * Math.pow(10, -decimals);
  }
}
