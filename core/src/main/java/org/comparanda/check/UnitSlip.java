package org.comparanda.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;

/**
 * A value is about 10 or 25.4 times too large or too small for what it usually is; or a whole
 * column is, against the protocol's range.
 */
record UnitSlip() implements ShelfCheck {
  /** Natural logs. No animal is three times another of its kind; 10 and 25.4 are 0.93 apart. */
  private static final double FAR = 1.0;

  private static final double NEAR = 0.4;

  private enum Slip {
    TEN_TIMES_TOO_LARGE(10, "ten times too large"),
    TEN_TIMES_TOO_SMALL(0.1, "ten times too small"),
    INCHES(1 / 25.4, "25.4 times too small, as if read in inches"),
    TIMES_INCH(25.4, "25.4 times too large, as if changed from inches twice");

    private final double factor;
    private final String words;

    Slip(double factor, String words) {
      this.factor = factor;
      this.words = words;
    }

    static Optional<Slip> of(double deviation) {
      return java.util.Arrays.stream(values())
          .filter(s -> Math.abs(deviation) > FAR && s.off(deviation) < NEAR)
          .min(Comparator.comparingDouble(s -> s.off(deviation)));
    }

    double off(double deviation) {
      return Math.abs(deviation - Math.log(factor));
    }
  }

  @Override
  public FindingKind kind() {
    return FindingKind.UNIT_SLIP;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    List<Finding> findings = new ArrayList<>();
    ShelfEntries.grouped(
            entries.all().stream().filter(BoneEntry::feedsFits).toList(), BoneEntry::element)
        .forEach(
            (element, bones) -> {
              columns(entries, element, bones, findings);
              UsualValues usual = new UsualValues(bones);
              bones.forEach(bone -> values(bone, usual, findings));
            });
    return findings;
  }

  private void values(BoneEntry bone, UsualValues usual, List<Finding> findings) {
    bone.values()
        .forEach(
            (code, mm) -> {
              if (mm > 0) {
                usual
                    .usual(bone, code)
                    .flatMap(u -> Slip.of(Math.log(mm) - u))
                    .ifPresent(slip -> findings.add(value(bone, code, mm, slip)));
              }
            });
  }

  private Finding value(BoneEntry bone, MeasurementCode code, double mm, Slip slip) {
    double meant = Millimetres.rounded(mm / slip.factor);
    return Finding.ofValue(
            kind(),
            bone,
            code.value(),
            mm,
            "%s of %s is %s for its kind.".formatted(code, Millimetres.number(mm), slip.words),
            "If so, it is %s; look at the card.".formatted(Millimetres.number(meant)))
        .correctedBy(Optional.of(Correction.Value.of(bone, code, meant)));
  }

  private void columns(
      ShelfEntries entries, ElementKey element, List<BoneEntry> bones, List<Finding> findings) {
    TreeMap<MeasurementCode, List<Double>> logs = new TreeMap<>();
    for (BoneEntry bone : bones) {
      bone.values()
          .forEach(
              (code, mm) -> {
                if (mm > 0) {
                  logs.computeIfAbsent(code, c -> new ArrayList<>()).add(Math.log(mm));
                }
              });
    }
    logs.forEach(
        (code, values) -> {
          double middle = Math.exp(UsualValues.median(values));
          entries
              .protocol()
              .measurement(element, code)
              .flatMap(Measurement::plausible)
              .filter(range -> values.size() > 1 && !holds(range, middle))
              .ifPresent(range -> column(element, code, middle, range).ifPresent(findings::add));
        });
  }

  private Optional<Finding> column(
      ElementKey element, MeasurementCode code, double middle, Measurement.Range range) {
    return java.util.Arrays.stream(Slip.values())
        .filter(slip -> holds(range, middle / slip.factor))
        .findFirst()
        .map(
            slip ->
                Finding.ofColumn(
                    kind(),
                    code.value(),
                    Millimetres.number(middle),
                    "Half of all %s of the %s lie outside what the protocol knows, as if %s."
                        .formatted(code, element, slip.words),
                    "Look in which unit the column was measured, and import it again by --unit."));
  }

  private static boolean holds(Measurement.Range range, double mm) {
    return mm >= range.lowMm() && mm <= range.highMm();
  }
}
