package org.comparanda.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.statistics.Estimated;
import org.comparanda.statistics.NotEstimable;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

class TallyTest {
  private static final TaxonName ONE = new TaxonName("Taxon one");
  private static final TaxonName TWO = new TaxonName("Taxon two");
  // Bovid column of Lyman 2008, table 6.4 (facts E06): humerus 2, femur 2, first phalanx 8, atlas
  // 1.
  private static final Map<String, Integer> BOVID =
      Map.of("humerus", 2, "femur", 2, "phalanx1", 8, "atlas", 1);
  private final Tally tally = new Tally(TallyTest::bovid);

  private static Outcome<PerSkeleton.Occurrence> bovid(TaxonName taxon, ElementKey element) {
    Integer number = BOVID.get(element.value());
    if (number == null) {
      return Outcome.none("its number in one skeleton isn't recorded.", "Add it to the protocol.");
    }
    Symmetry symmetry = number == 1 ? Symmetry.AXIAL : Symmetry.SIDED;
    return Outcome.of(new PerSkeleton.Occurrence(number, symmetry));
  }

  private static TallyRow row(
      String place, TaxonName taxon, String element, Side side, Portion portion, int count) {
    return new TallyRow(place, taxon, new ElementKey(element), side, portion, count);
  }

  private static TallyRow whole(String place, TaxonName t, String element, Side side, int count) {
    return row(place, t, element, side, Portion.WHOLE, count);
  }

  private static List<TallyRow> together(List<TallyRow> rows) {
    return rows.stream()
        .map(r -> row("all", r.taxon(), r.element().value(), r.side(), r.portion(), r.count()))
        .toList();
  }

  // Lyman 2008, table 2.14 (facts E08): stratum 1 of the published example.
  @Test
  void publishedStratumGivesFiveAndTenAnimals() {
    List<TallyRow> rows =
        List.of(
            whole("1", ONE, "humerus", Side.RIGHT, 5),
            whole("1", ONE, "humerus", Side.LEFT, 4),
            whole("1", ONE, "femur", Side.RIGHT, 4),
            whole("1", ONE, "femur", Side.LEFT, 3),
            whole("1", TWO, "humerus", Side.RIGHT, 10),
            whole("1", TWO, "humerus", Side.LEFT, 5),
            whole("1", TWO, "femur", Side.RIGHT, 4),
            whole("1", TWO, "femur", Side.LEFT, 8));
    List<TaxonTally> taxa = tally.count(rows).get(0).taxa();
    assertEquals(5, taxa.get(0).mni());
    assertEquals(10, taxa.get(1).mni());
  }

  // Facts E09 and E10, worked by hand there: summed 4 + 3 = 7, pooled max(6, 1, 3, 5) = 6.
  private static final List<TallyRow> TWO_UNITS =
      List.of(
          whole("unit 1", ONE, "humerus", Side.LEFT, 3),
          whole("unit 1", ONE, "humerus", Side.RIGHT, 1),
          whole("unit 1", ONE, "femur", Side.LEFT, 1),
          whole("unit 1", ONE, "femur", Side.RIGHT, 4),
          whole("unit 2", ONE, "humerus", Side.LEFT, 3),
          whole("unit 2", ONE, "femur", Side.LEFT, 2),
          whole("unit 2", ONE, "femur", Side.RIGHT, 1));

  @Test
  void minimumNumbersOfTwoUnitsAreNotThoseOfTheWhole() {
    List<PlaceTally> apart = tally.count(TWO_UNITS);
    assertEquals(4, apart.get(0).taxa().get(0).mni());
    assertEquals(3, apart.get(1).taxa().get(0).mni());
    assertEquals(6, tally.count(together(TWO_UNITS)).get(0).taxa().get(0).mni());
  }

  @Test
  void specimensElementsAndUnitsOfTheHandExample() {
    TaxonTally all = tally.count(together(TWO_UNITS)).get(0).taxa().get(0);
    assertEquals(15, all.nisp());
    ElementTally femur = all.elements().get(0);
    ElementTally humerus = all.elements().get(1);
    assertEquals(8, femur.mne());
    assertEquals(new Estimated<>(4.0), femur.mau());
    assertEquals(7, humerus.mne());
    assertEquals(new Estimated<>(3.5), humerus.mau());
  }

  // Facts E12: 9 bovid first phalanges of 8 in a skeleton, sides unknown, are 2 animals.
  @Test
  void unsidedBonesAreDividedByTheirNumberInOneSkeleton() {
    TaxonTally tallied =
        tally.count(List.of(whole("pit", ONE, "phalanx1", Side.NOT_KNOWN, 9))).get(0).taxa().get(0);
    assertEquals(2, tallied.mni());
  }

  // By hand: 2 whole + max(3 proximal, 1 shaft, 4 distal) = 6 left humeri; 10 specimens.
  @Test
  void wholeBonesAndTheCommonestPortionMakeTheMinimumOfElements() {
    ElementTally humerus =
        tally
            .count(
                List.of(
                    whole("pit", ONE, "humerus", Side.LEFT, 2),
                    row("pit", ONE, "humerus", Side.LEFT, Portion.PROXIMAL, 3),
                    row("pit", ONE, "humerus", Side.LEFT, Portion.SHAFT, 1),
                    row("pit", ONE, "humerus", Side.LEFT, Portion.DISTAL, 4)))
            .get(0)
            .taxa()
            .get(0)
            .elements()
            .get(0);
    assertEquals(10, humerus.nisp());
    assertEquals(6, humerus.mne());
  }

  // By hand: an unfused shaft and its loose distal end are one bone.
  @Test
  void looseEpiphysisCountsWithItsShaftOnce() {
    TaxonTally tallied =
        tally
            .count(
                List.of(
                    row("pit", ONE, "femur", Side.LEFT, Portion.SHAFT, 1),
                    row("pit", ONE, "femur", Side.LEFT, Portion.DISTAL, 1)))
            .get(0)
            .taxa()
            .get(0);
    assertEquals(1, tallied.elements().get(0).mne());
    assertEquals(1, tallied.mni());
  }

  @Test
  void fragmentsOfNoNamedPortionAloneCountAsOne() {
    assertEquals(
        1,
        tally
            .count(List.of(row("pit", ONE, "femur", Side.LEFT, Portion.OTHER, 7)))
            .get(0)
            .taxa()
            .get(0)
            .elements()
            .get(0)
            .mne());
  }

  @Test
  void elementOfUnknownNumberHasNoUnitsAndSaysWhy() {
    TaxonTally tallied =
        tally.count(List.of(whole("pit", ONE, "rib", Side.LEFT, 12))).get(0).taxa().get(0);
    assertTrue(tallied.elements().get(0).mau() instanceof NotEstimable);
    assertEquals(1, tallied.mni());
    assertTrue(tallied.steps().get(0).contains("isn't recorded"), tallied.steps().toString());
  }

  @Test
  void everyStepIsOnShow() {
    TaxonTally tallied = tally.count(together(TWO_UNITS)).get(0).taxa().get(0);
    assertEquals(
        List.of(
            "femur: 8 specimens, at least 3 left, 5 right, 0 unsided; 2 in one skeleton, so at least 5 animals.",
            "humerus: 7 specimens, at least 6 left, 1 right, 0 unsided; 2 in one skeleton, so at least 6 animals.",
            "MNI is the largest of these: 6."),
        tallied.steps());
  }

  @Test
  void orderOfRowsDoesNotMatter() {
    List<TallyRow> reversed =
        Stream.iterate(TWO_UNITS.size() - 1, i -> i >= 0, i -> i - 1).map(TWO_UNITS::get).toList();
    assertEquals(tally.count(TWO_UNITS), tally.count(reversed));
  }
}
