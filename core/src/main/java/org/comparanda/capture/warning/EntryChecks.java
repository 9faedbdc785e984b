package org.comparanda.capture.warning;

import java.util.List;

/** All checks of a value in the field, the ones with a proposal first. */
public final class EntryChecks {
  private EntryChecks() {}

  public static List<EntryCheck> all() {
    return List.of(
        FactorSlip.tenTimesTooLarge(),
        FactorSlip.tenTimesTooSmall(),
        FactorSlip.inchesForMillimetres(),
        FactorSlip.millimetresForInches(),
        new SwappedDigits(),
        new OutsideTheShelf(),
        new NeighbourValue(),
        new TakeAgainstTake(),
        new SidesApart(),
        new PartLongerThanWhole(),
        new TooLongForCaliper());
  }

  /** What all of them say, in their order; empty when nothing is odd. */
  public static List<Warning> warnings(Entry entry) {
    return all().stream().flatMap(check -> check.check(entry).stream()).toList();
  }
}
