package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;

/** All integrity checks. */
public final class AnimalChecks {
  private AnimalChecks() {}

  public static List<ShelfCheck> all() {
    return List.of(
        new UnitSlip(),
        new SwappedDigits(),
        new SidesDiffer(SidesDiffer.USUAL_TOLERANCE),
        new PartLonger(),
        new Outlier(Outlier.USUAL_LEVEL),
        new NumberTwice(),
        new SpelledTwoWays(),
        new TwoTaxa(),
        new YoungInFit(),
        new CastInFit(),
        new FewAnimals(FewAnimals.ENOUGH),
        new UnknownCode());
  }

  /**
   * What all of them find, in their order. A bone with a value in another unit is not named again
   * for being unlike its kind.
   */
  public static List<Finding> findings(ShelfEntries entries) {
    List<Finding> found = new ArrayList<>();
    for (ShelfCheck check : all()) {
      for (Finding finding : check.check(entries)) {
        if (finding.kind() != FindingKind.OUTLIER || !explained(finding, found)) {
          found.add(finding);
        }
      }
    }
    return found;
  }

  private static boolean explained(Finding outlier, List<Finding> before) {
    return before.stream()
        .filter(f -> f.kind() == FindingKind.UNIT_SLIP)
        .anyMatch(f -> f.animal().equals(outlier.animal()) && f.bone().equals(outlier.bone()));
  }
}
