package org.comparanda.check;

import static org.comparanda.check.CheckRows.SHEEP;
import static org.comparanda.check.CheckRows.bone;
import static org.comparanda.check.CheckRows.check;
import static org.comparanda.check.CheckRows.flock;
import static org.comparanda.check.CheckRows.only;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.reference.SideTolerance;
import org.junit.jupiter.api.Test;

/** An acceptance holds for what it was given for, and no longer. */
class AcceptedFindingTest {
  @Test
  void anAcceptedFindingComesUpAgainWhenItsValueChanges() {
    ShelfCheck sides = new SidesDiffer(SideTolerance.usual());
    Finding accepted = only(sides, sides(158.5));
    AcceptedFinding acceptance =
        AcceptedFinding.of(accepted, "healed break", Optional.empty(), Instant.EPOCH);
    assertEquals(
        List.of(Optional.of(acceptance)),
        Judgement.of(check(sides, sides(158.5)), List.of(acceptance)).stream()
            .map(Judgement::accepted)
            .toList());
    assertEquals(
        List.of(Optional.empty()),
        Judgement.of(check(sides, sides(159.5)), List.of(acceptance)).stream()
            .map(Judgement::accepted)
            .toList());
  }

  @Test
  void itComesUpAgainWhenTheValueThatItIsHeldAgainstChanges() {
    ShelfCheck sides = new SidesDiffer(SideTolerance.usual());
    assertEquals(
        Optional.empty(), judgedAfter(sides, sides(158.5), sides(158.5, 148.0)).accepted());
    ShelfCheck parts = new PartLonger();
    assertEquals(
        Optional.empty(),
        judgedAfter(
                parts,
                List.of(bone("HB-1", SHEEP, "humerus", Side.LEFT, "BT", 33.0, "Bd", 32.0)),
                List.of(bone("HB-1", SHEEP, "humerus", Side.LEFT, "BT", 33.0, "Bd", 31.0)))
            .accepted());
  }

  @Test
  void anAcceptedBoneUnlikeItsKindStaysAcceptedWhicheverOfItsValuesIsOddest() {
    List<BoneEntry> rows = flock(30);
    rows.add(bone("HB-99", SHEEP, "humerus", Side.LEFT, "GL", 152.0, "Bd", 41.0));
    Finding found = only(new Outlier(Outlier.USUAL_LEVEL), rows);
    AcceptedFinding acceptance =
        AcceptedFinding.of(found, "a giant", Optional.empty(), Instant.EPOCH);
    Finding otherwise =
        Finding.ofAnimal(FindingKind.OUTLIER, "HB-99", "humerus left", "GL", "152", "odd", "look")
            .restingOn(found.basis().orElseThrow());
    assertTrue(acceptance.accepts(otherwise));
    rows.set(30, bone("HB-99", SHEEP, "humerus", Side.LEFT, "GL", 151.0, "Bd", 41.0));
    assertTrue(!acceptance.accepts(only(new Outlier(Outlier.USUAL_LEVEL), rows)));
  }

  /** What becomes of a finding of the first rows, accepted, when the rows are the second. */
  private static Judgement judgedAfter(
      ShelfCheck check, List<BoneEntry> before, List<BoneEntry> after) {
    AcceptedFinding acceptance =
        AcceptedFinding.of(only(check, before), "seen", Optional.empty(), Instant.EPOCH);
    return Judgement.of(List.of(only(check, after)), List.of(acceptance)).get(0);
  }

  private static List<BoneEntry> sides(double left) {
    return sides(left, 150.0);
  }

  private static List<BoneEntry> sides(double left, double right) {
    return List.of(
        bone("HB-1", SHEEP, "humerus", Side.LEFT, "GL", left),
        bone("HB-1", SHEEP, "humerus", Side.RIGHT, "GL", right));
  }
}
