package org.comparanda.check;

import static org.comparanda.check.CheckRows.SHEEP;
import static org.comparanda.check.CheckRows.TABLES;
import static org.comparanda.check.CheckRows.bone;
import static org.comparanda.check.CheckRows.check;
import static org.comparanda.check.CheckRows.code;
import static org.comparanda.check.CheckRows.entry;
import static org.comparanda.check.CheckRows.flock;
import static org.comparanda.check.CheckRows.only;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.reference.SideTolerance;
import org.junit.jupiter.api.Test;

/** One row or two for each check; values invented, all sentences as a keeper reads them. */
class AnimalChecksTest {
  @Test
  void aValueTenTimesTooSmallIsASlipOfUnit() {
    List<BoneEntry> rows = flock(12);
    rows.add(bone("HB-9", SHEEP, "humerus", Side.LEFT, "GL", 15.1, "Bd", 32.0));
    Finding found = only(new UnitSlip(), rows);
    assertEquals("GL of 15.1 is ten times too small for its kind.", found.message());
    assertEquals("If so, it is 151; look at the card.", found.remedy());
    assertEquals(Optional.of("HB-9"), found.animal());
    assertEquals(Optional.of("humerus left"), found.bone());
    assertEquals(Optional.of("15.1"), found.value());
  }

  @Test
  void inATaxonOfOneTheRestOfTheBoneTellsTheSlip() {
    List<BoneEntry> rows = flock(12);
    rows.add(
        bone("HB-9", "Capra hircus", "humerus", Side.LEFT, "GL", 6.02, "Bd", 33.0, "SD", 16.0));
    assertEquals(
        "GL of 6.02 is 25.4 times too small, as if read in inches for its kind.",
        only(new UnitSlip(), rows).message());
  }

  @Test
  void aWholeColumnInCentimetresIsOneFindingWithoutAnimal() {
    List<BoneEntry> rows = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      rows.add(bone("HB-" + i, SHEEP, "calcaneus", Side.LEFT, "GB", 1.7 + 0.1 * i));
    }
    Finding found = only(new UnitSlip(), rows);
    assertEquals(Optional.empty(), found.animal());
    assertEquals(Optional.of("GB"), found.column());
  }

  @Test
  void swappedDigitsAreProposedTheRightWayRound() {
    List<BoneEntry> rows = flock(30);
    rows.add(bone("HB-99", SHEEP, "humerus", Side.LEFT, "GL", 154.0, "Bd", 23.1));
    assertEquals(
        "Bd of 23.1 is unlike the rest; with two digits swapped, 32.1, it is like it.",
        only(new SwappedDigits(), rows).message());
  }

  @Test
  void sidesApartByMoreThanATwentiethAreNamed() {
    List<BoneEntry> rows =
        List.of(
            bone("HB-1", SHEEP, "humerus", Side.LEFT, "GL", 150.0, "Bd", 32.0),
            bone("HB-1", SHEEP, "humerus", Side.RIGHT, "GL", 158.5, "Bd", 32.5));
    assertEquals(
        "Left is 150, right is 158.5.",
        only(new SidesDiffer(SideTolerance.usual()), rows).message());
  }

  @Test
  void aPartLongerThanItsWholeIsNamed() {
    List<BoneEntry> rows =
        List.of(bone("HB-1", SHEEP, "humerus", Side.LEFT, "BT", 33.0, "Bd", 32.0));
    assertEquals(
        "BT is 33 and longer than Bd, which is 32 and holds it.",
        only(new PartLonger(), rows).message());
  }

  @Test
  void aBoneFarOutsideItsKindIsNamed() {
    List<BoneEntry> rows = flock(30);
    rows.add(bone("HB-99", SHEEP, "humerus", Side.LEFT, "GL", 152.0, "Bd", 41.0));
    Finding found = only(new Outlier(Outlier.USUAL_LEVEL), rows);
    assertEquals(Optional.of("HB-99"), found.animal());
    assertEquals(FindingKind.OUTLIER, found.kind());
  }

  @Test
  void oneNumberOnTwoLeftBonesIsNamed() {
    List<BoneEntry> rows =
        List.of(
            bone("HB-1", SHEEP, "humerus", Side.LEFT, "GL", 150.0),
            bone("HB-1", SHEEP, "humerus", Side.LEFT, "GL", 151.0),
            bone("HB-1", SHEEP, "humerus", Side.RIGHT, "GL", 151.0));
    assertEquals(
        "HB-1 has 2 bones that are humerus left: rows 2, 2.",
        only(new NumberTwice(), rows).message());
  }

  @Test
  void aNameOneLetterOffIsNamedWithTheOneMeant() {
    Finding found =
        only(
            new SpelledTwoWays(),
            List.of(bone("HB-1", "Ovis arees", "humerus", Side.LEFT, "GL", 150.0)));
    assertEquals("\"Ovis arees\" may be Ovis aries spelled another way.", found.message());
    assertEquals(Optional.of("HB-1"), found.animal());
  }

  @Test
  void codesOfGroupsThatDifferInOneLetterAreNotSpellings() {
    assertEquals(
        List.of(),
        check(
            new SpelledTwoWays(),
            List.of(
                bone("w1", "ar_f", "humerus", Side.LEFT, "GL", 150.0),
                bone("w2", "ar_m", "humerus", Side.LEFT, "GL", 150.0))));
  }

  @Test
  void anAnimalWithTwoTaxaIsNamedOnceWithTheRarer() {
    Finding found =
        only(
            new TwoTaxa(),
            List.of(
                bone("HB-1", SHEEP, "humerus", Side.LEFT, "GL", 150.0),
                bone("HB-1", SHEEP, "femur", Side.LEFT, "GL", 170.0),
                bone("HB-1", "Capra hircus", "calcaneus", Side.LEFT, "GL", 55.0)));
    assertEquals("HB-1 stands under Capra hircus and Ovis aries.", found.message());
    assertEquals(Optional.of("calcaneus left"), found.bone());
    assertEquals(Optional.of("Capra hircus"), found.value());
  }

  @Test
  void aJuvenileWithoutTheFlagIsNamed() {
    BoneEntry bone =
        entry("HB-1", SHEEP, "humerus", Set.of(), "juvenile", "", Map.of(code("GL"), 120.0));
    assertEquals(
        "HB-1 is recorded as juvenile, but its bones feed fits of adults.",
        only(new YoungInFit(), List.of(bone)).message());
  }

  @Test
  void aFlaggedCastOrJuvenileIsInOrder() {
    BoneEntry bone =
        entry(
            "HB-1",
            SHEEP,
            "humerus",
            EnumSet.of(Flag.CAST, Flag.JUVENILE),
            "juvenile",
            "plaster cast",
            Map.of(code("GL"), 120.0));
    assertEquals(List.of(), check(new YoungInFit(), List.of(bone)));
    assertEquals(List.of(), check(new CastInFit(), List.of(bone)));
  }

  @Test
  void aRemarkThatSpeaksOfACastIsNamedAndACastrateIsNot() {
    BoneEntry cast =
        entry("HB-1", SHEEP, "humerus", Set.of(), "", "resin cast", Map.of(code("GL"), 150.0));
    BoneEntry castrate =
        entry("HB-2", SHEEP, "humerus", Set.of(), "", "castrated", Map.of(code("GL"), 150.0));
    assertEquals(Optional.of("HB-1"), only(new CastInFit(), List.of(cast, castrate)).animal());
  }

  @Test
  void whereOneBoneIsFlaggedAsCastTheRemedyNamesIt() {
    BoneEntry flagged =
        entry(
            "HB-1",
            SHEEP,
            "humerus",
            Set.of(Flag.CAST),
            "",
            "resin cast",
            Map.of(code("GL"), 150.0));
    BoneEntry other =
        entry("HB-1", SHEEP, "femur", Set.of(), "", "resin cast", Map.of(code("GL"), 170.0));
    Finding found = only(new CastInFit(), List.of(flagged, other));
    assertEquals(
        "The humerus left is flagged as cast: if no other is one, accept this.", found.remedy());
    assertEquals(Optional.empty(), found.correction());
  }

  @Test
  void aTaxonOfTwoAnimalsIsTooFewAndHasNoAnimal() {
    Finding found =
        only(
            new FewAnimals(FewAnimals.ENOUGH),
            List.of(
                bone("HB-1", SHEEP, "humerus", Side.LEFT, "GL", 150.0),
                bone("HB-2", SHEEP, "humerus", Side.LEFT, "GL", 150.0)));
    assertEquals(Optional.empty(), found.animal());
    assertEquals(Optional.of(SHEEP), found.value());
  }

  @Test
  void aCodeThatTheElementLacksIsNamed() {
    Finding found =
        only(new UnknownCode(), List.of(bone("HB-1", SHEEP, "humerus", Side.LEFT, "Bq", 30.0)));
    assertEquals("Bq is no measurement of the humerus in the protocol (row 2).", found.message());
  }

  @Test
  void aTableThatNamesNoElementSaysNothingWrong() {
    assertEquals(
        List.of(),
        check(
            new UnknownCode(),
            List.of(bone("p1", "Adelie", ElementKey.UNNAMED.value(), Side.NOT_KNOWN, "x", 30.0))));
  }

  @Test
  void everyKindHasOneCheckAndSoundRowsHaveNoFinding() {
    assertEquals(
        EnumSet.complementOf(EnumSet.of(FindingKind.UNREADABLE)),
        EnumSet.copyOf(AnimalChecks.all().stream().map(ShelfCheck::kind).toList()));
    // An unreadable cell is found by reading the table, not by a check.
    assertEquals(FindingKind.values().length - 1, AnimalChecks.all().size());
    assertEquals(
        List.of(),
        AnimalChecks.findings(new ShelfEntries(flock(30), TABLES.protocol(), TABLES.taxa())));
  }

  @Test
  void badRowsNeverThrow() {
    List<BoneEntry> rows =
        List.of(
            entry("HB-1", SHEEP, "humerus", Set.of(), "", "", Map.of(code("GL"), -1.0)),
            entry("HB-2", SHEEP, "humerus", Set.of(), "", "", Map.of(code("GL"), 0.0)),
            entry("HB-3", SHEEP, "nothing", Set.of(), "?", "?", Map.of()),
            new BoneEntry(
                9,
                "HB-4",
                Optional.empty(),
                new ElementKey("humerus"),
                Side.NOT_KNOWN,
                Portion.OTHER,
                Set.of(),
                "",
                "",
                Map.of(code("GL"), 1e300)));
    assertTrue(
        AnimalChecks.findings(new ShelfEntries(rows, TABLES.protocol(), TABLES.taxa())).stream()
            .noneMatch(f -> f.message().isBlank() || f.remedy().isBlank()));
  }
}
