package org.comparanda.capture.warning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.comparanda.capture.CaliperInput;
import org.comparanda.capture.CaliperText;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.Measurement;

/**
 * The value lies outside the shelf, and inside it with two neighbouring digits swapped. Of several
 * such, the one nearest to the middle of the shelf is proposed; none with a zero in front.
 */
record SwappedDigits() implements EntryCheck {
  @Override
  public Optional<Warning> check(Entry entry) {
    return entry
        .rangeMissed()
        .flatMap(
            range ->
                swapped(entry).stream()
                    .filter(mm -> mm >= range.lowMm() && mm <= range.highMm())
                    .min(Comparator.comparingDouble(mm -> Math.abs(mm - middle(range)))))
        .map(
            mm ->
                new Warning(
                    "Two digits may be swapped: did you mean " + Millimetres.text(mm) + "?",
                    Optional.of(new Length(mm))));
  }

  private static double middle(Measurement.Range range) {
    return (range.lowMm() + range.highMm()) / 2;
  }

  private static List<Double> swapped(Entry entry) {
    CaliperText reader = new CaliperText(entry.card());
    String print = entry.value().print();
    List<Integer> digits = placesOfDigits(print);
    List<Double> lengths = new ArrayList<>();
    for (int i = 0; i + 1 < digits.size(); i++) {
      StringBuilder other = new StringBuilder(print);
      other.setCharAt(digits.get(i), print.charAt(digits.get(i + 1)));
      other.setCharAt(digits.get(i + 1), print.charAt(digits.get(i)));
      boolean nobodyTypes = other.charAt(0) == '0';
      if (!nobodyTypes && reader.burst(other.toString()) instanceof CaliperInput.Read read) {
        lengths.add(read.values().get(0).length().mm());
      }
    }
    return lengths;
  }

  private static List<Integer> placesOfDigits(String text) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        places.add(i);
      }
    }
    return places;
  }
}
