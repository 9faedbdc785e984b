package org.comparanda.register;

import static org.comparanda.register.Invented.code;
import static org.comparanda.register.Invented.sheep;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.HeldBone;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.reference.AnimalId;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

class MergeTest {
  private static final AnimalCard KEPT =
      sheep("A-1", Side.LEFT, Map.of(code("GL"), 150.0, code("Bd"), 32.0));
  private static final AnimalCard OTHER =
      sheep("A-2", Side.LEFT, Map.of(code("GL"), 151.0, code("SD"), 15.0));

  private static Merge merged(AnimalCard kept, AnimalCard other) {
    return Merge.of(unmeasured(kept), unmeasured(other)).value().orElseThrow();
  }

  private static String refused(AnimalCard kept, AnimalCard other) {
    return Merge.of(unmeasured(kept), unmeasured(other)).fold(m -> "merged", none -> none.reason());
  }

  private static Merge.Skeleton unmeasured(AnimalCard card) {
    return new Merge.Skeleton(card, List.of());
  }

  private static SkeletonBone measured(String animal, Side side) {
    return new SkeletonBone(
        new BoneId(animal + " humerus " + side),
        new AnimalId(animal),
        new HeldBone(new ElementKey("humerus"), side, Portion.WHOLE, BoneState.notRecorded()));
  }

  private static Merge merged(
      AnimalCard kept, List<SkeletonBone> ofKept, AnimalCard other, List<SkeletonBone> ofOther) {
    return Merge.of(new Merge.Skeleton(kept, ofKept), new Merge.Skeleton(other, ofOther))
        .value()
        .orElseThrow();
  }

  @Test
  void aBoneThatOnlyTheOtherMeasuredGoesAlong() {
    AnimalCard right = sheep("A-2", Side.RIGHT, Map.of(code("GL"), 151.0));
    Merge merge = merged(KEPT, List.of(), right, List.of(measured("A-2", Side.RIGHT)));
    assertEquals(
        List.of(
            new SkeletonBone(
                new BoneId("A-2 humerus RIGHT"),
                new AnimalId("A-1"),
                measured("A-1", Side.RIGHT).held())),
        merge.measured());
    assertEquals(List.of(), merge.differing());
  }

  @Test
  void aBoneThatBothMeasuredStaysUnderTheSecondNumberAndIsSaid() {
    AnimalCard same = sheep("A-2", Side.LEFT, Map.of(code("GL"), 150.0));
    Merge merge =
        merged(
            KEPT, List.of(measured("A-1", Side.LEFT)), same, List.of(measured("A-2", Side.LEFT)));
    assertEquals(List.of(), merge.measured());
    assertEquals(
        List.of(new Change("humerus left measured as", "A-2 humerus LEFT", "A-1 humerus LEFT")),
        merge.differing());
  }

  @Test
  void readingsThatSpeakAgainstTheValuesThatStayStayWithTheOther() {
    Merge merge = merged(KEPT, List.of(), OTHER, List.of(measured("A-2", Side.LEFT)));
    assertEquals(List.of(), merge.measured());
    assertEquals(
        List.of(
            new Change("humerus left GL", "151", "150"),
            new Change("humerus left measured as", "A-2 humerus LEFT", "other values")),
        merge.differing());
  }

  @Test
  void theKeptOneGetsWhatItLacksAndKeepsWhatItSays() {
    Merge merge = merged(KEPT, OTHER);
    assertEquals(
        Map.of(code("GL"), 150.0, code("Bd"), 32.0, code("SD"), 15.0),
        merge.result().animal().bones().get(0).values());
    assertEquals(List.of(new Change("humerus left GL", "151", "150")), merge.differing());
  }

  @Test
  void aBoneOfTheOtherIsAdded() {
    Merge merge = merged(KEPT, sheep("A-2", Side.RIGHT, Map.of(code("GL"), 151.0)));
    assertEquals(2, merge.result().animal().bones().size());
    assertEquals(List.of(), merge.differing());
  }

  @Test
  void whatKeepsOneOutOfFitsOrInTheHouseHoldsForBoth() {
    AnimalCard strict =
        OTHER
            .withAnimal(OTHER.animal().withFlags(Set.of(Flag.CAST)))
            .withRestriction(Restriction.none().withExport(Restriction.Export.FORBIDDEN));
    AnimalCard result = merged(KEPT, strict).result();
    assertEquals(Set.of(Flag.CAST), result.animal().flags());
    assertEquals(Restriction.Export.FORBIDDEN, result.restriction().export());
  }

  @Test
  void aMethodIsNotTakenOverForAnotherValue() {
    AnimalCard weighed = KEPT.withAnimal(KEPT.animal().withBodyMassG(Optional.of(40_000.0)));
    AnimalCard estimated =
        OTHER
            .withAnimal(OTHER.animal().withBodyMassG(Optional.of(42_000.0)))
            .withMass(BodyMeasure.notKnown().withKind(BodyMeasure.Kind.ESTIMATED));
    AnimalCard result = merged(weighed, estimated).result();
    assertEquals(Optional.of(40_000.0), result.animal().bodyMassG());
    assertEquals(BodyMeasure.Kind.NOT_KNOWN, result.mass().kind());
  }

  @Test
  void twoTaxaAreNotOneAnimal() {
    AnimalCard goat =
        OTHER.withAnimal(OTHER.animal().withTaxon(Optional.of(new TaxonName("Capra hircus"))));
    assertEquals(
        "A-1 is Ovis aries and A-2 is Capra hircus. Nothing was merged.", refused(KEPT, goat));
  }

  @Test
  void onlyAnimalsOnTheShelfAreMerged() {
    assertEquals(
        "A-2 is retired. Nothing was merged.",
        refused(KEPT, OTHER.withStanding(new Standing.Retired())));
    assertEquals("Both numbers are A-1. Nothing was merged.", refused(KEPT, KEPT));
  }
}
