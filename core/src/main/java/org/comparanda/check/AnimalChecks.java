package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.reference.SideTolerance;

/** All integrity checks. */
public final class AnimalChecks {
  private AnimalChecks() {}

  public static List<ShelfCheck> all() {
    return List.of(
        new UnitSlip(),
        new SwappedDigits(),
        new SidesDiffer(SideTolerance.usual()),
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
    return findings(entries, (number, kind) -> {});
  }

  /** Single values that look like another unit. */
  public static List<Finding> unitSlips(ShelfEntries entries) {
    return new UnitSlip()
        .check(entries).stream().filter(finding -> finding.animal().isPresent()).toList();
  }

  /** Hears which check begins, by its number and kind. */
  public interface Watcher {
    void begins(int number, FindingKind kind);

    /** Asked often, inside the long checks too; yes ends them with whatever was found by then. */
    default boolean stopped() {
      return false;
    }
  }

  /** The same, saying how far it is; what was found by then where it is stopped. */
  public static List<Finding> findings(ShelfEntries entries, Watcher watcher) {
    ShelfEntries watched = entries.stoppedBy(watcher::stopped);
    List<Finding> found = new ArrayList<>();
    List<ShelfCheck> checks = all();
    for (ShelfCheck check : checks) {
      if (watched.stopped()) {
        return found;
      }
      watcher.begins(checks.indexOf(check) + 1, check.kind());
      for (Finding finding : check.check(watched)) {
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
