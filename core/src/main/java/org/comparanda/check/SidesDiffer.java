package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.SideTolerance;

/** Left and right of one animal differ by more than a part of the longer one. */
record SidesDiffer(SideTolerance tolerance) implements ShelfCheck {
  @Override
  public FindingKind kind() {
    return FindingKind.SIDES_DIFFER;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    List<Finding> findings = new ArrayList<>();
    for (List<BoneEntry> animal : entries.byAnimal().values()) {
      for (List<BoneEntry> rows : ShelfEntries.grouped(animal, BoneEntry::element).values()) {
        SidePair.of(rows).ifPresent(pair -> compare(pair, findings));
      }
    }
    return findings;
  }

  private void compare(SidePair pair, List<Finding> findings) {
    for (MeasurementCode code : pair.shared()) {
      double left = pair.left().value(code);
      double right = pair.right().value(code);
      if (tolerance.exceeds(left, right)) {
        findings.add(
            Finding.ofValue(
                    kind(),
                    pair.left(),
                    code.value(),
                    left,
                    "Left is %s, right is %s."
                        .formatted(Millimetres.number(left), Millimetres.number(right)),
                    "Measure both sides again, or flag one as pathological.")
                .restingOn(
                    "%s: %s and %s"
                        .formatted(code, Millimetres.number(left), Millimetres.number(right))));
      }
    }
  }

  /** The one left and the one right bone of an element. */
  record SidePair(BoneEntry left, BoneEntry right) {
    static java.util.Optional<SidePair> of(List<BoneEntry> rows) {
      List<BoneEntry> left = rows.stream().filter(r -> usable(r, Side.LEFT)).toList();
      List<BoneEntry> right = rows.stream().filter(r -> usable(r, Side.RIGHT)).toList();
      return left.size() == 1 && right.size() == 1
          ? java.util.Optional.of(new SidePair(left.get(0), right.get(0)))
          : java.util.Optional.empty();
    }

    private static boolean usable(BoneEntry row, Side side) {
      return row.side() == side && row.feedsFits();
    }

    List<MeasurementCode> shared() {
      return left.values().keySet().stream().filter(right.values()::containsKey).toList();
    }

    ElementKey element() {
      return left.element();
    }
  }
}
