package org.comparanda.sizeestimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.phylo.Newick;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

/** Invented animals: mass grows with the cube of the femur, give or take a few per cent. */
class SizeDeskTest {
  private static final ElementKey FEMUR = new ElementKey("femur");
  private static final ElementKey HUMERUS = new ElementKey("humerus");
  private static final MeasurementCode GL = new MeasurementCode("GL");
  private static final SizeQuestion MASS = SizeQuestion.of("body_mass", "femur.GL");

  private static Animal animal(int i, String taxon, String origin, Set<Flag> flags) {
    double femur = 100 + 10 * i;
    double wiggle = 1 + 0.03 * ((i * 7) % 5 - 2);
    return TableShelf.withMass(
        TableShelf.animal(
            "H" + (10 + i),
            taxon,
            TableShelf.bone(FEMUR, Side.LEFT, Map.of(GL, femur * 1.01)),
            TableShelf.bone(FEMUR, Side.RIGHT, Map.of(GL, femur / 1.01)),
            TableShelf.bone(
                HUMERUS, Side.LEFT, Map.of(GL, 0.8 * femur * (1 + 0.01 * ((i * 3) % 4 - 1))))),
        femur * femur * femur / 50 * wiggle,
        origin,
        flags);
  }

  private static List<Animal> animals() {
    List<Animal> animals = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      animals.add(animal(i, i % 2 == 0 ? "Ovis aries" : "Capra hircus", "wild", Set.of()));
    }
    return animals;
  }

  private static SizeDesk desk(List<Animal> animals) {
    return SizeDesk.of(new Shelf(animals), TableShelf.NO_PROTOCOL);
  }

  @Test
  void bothSidesOfAnAnimalAreOneRowTheMeanOfTheirLogs() {
    FittedLine line = value(desk(animals()).line(MASS));
    assertEquals(12, line.n());
    // 100·1.01 and 100/1.01: the mean of logs is 100 exactly; 1e-12: rounding.
    assertEquals(100, line.points().get(0).x().get(0), 1e-12);
    assertEquals("H10", line.points().get(0).label());
    assertEquals(List.of(new TaxonName("Capra hircus"), new TaxonName("Ovis aries")), line.taxa());
  }

  @Test
  void flagsAndCaptiveMassKeepOutAndAreCounted() {
    List<Animal> animals = animals();
    animals.add(animal(20, "Ovis aries", "captive", Set.of()));
    animals.add(animal(21, "Ovis aries", "wild", Set.of(Flag.CAST)));
    FittedLine line = value(desk(animals).line(MASS));
    assertEquals(12, line.n());
    assertEquals(
        List.of(
            "1 captive animal(s) left out: captive mass is off.",
            "1 flagged animal(s) left out (cast, young, crushed or the like)."),
        line.notes());
    assertEquals(13, value(desk(animals).withCaptiveMass().line(MASS)).n());
    assertEquals(13, value(desk(animals).line(SizeQuestion.of("humerus.GL", "femur.GL"))).n());
  }

  @Test
  void theOwnAnimalOfTheBoneIsOutOfTheLine() {
    SizeDesk desk = desk(animals());
    SizeEstimate own =
        value(
            value(desk.line(MASS))
                .estimate(TableShelf.inHand("femur", Optional.of("H15"), "GL", 150)));
    SizeEstimate without =
        value(
            value(desk.without(new AnimalId("H15")).line(MASS))
                .estimate(Map.of("femur.GL", 150.0)));
    assertEquals(without, own);
    assertEquals(9, own.degreesOfFreedom());
  }

  @Test
  void outsideTheRangeIsSaidInWordsAndNumberWithAWiderInterval() {
    FittedLine line = value(desk(animals()).line(MASS));
    SizeEstimate inside = value(line.estimate(Map.of("femur.GL", 150.0)));
    SizeEstimate outside = value(line.estimate(Map.of("femur.GL", 275.1)));
    SizeEstimate giant = value(line.estimate(Map.of("femur.GL", 420.0)));
    assertEquals(Reach.WITHIN, inside.reach());
    assertEquals(List.of(), inside.warnings());
    // 275.1 / 210 = 1.31 by hand.
    assertEquals(
        "31 % larger than the largest femur GL on the shelf",
        outside.outsideRange().orElseThrow().sentence());
    assertEquals(Reach.OUTSIDE, outside.reach());
    assertEquals(Reach.SCALING_GUESS, giant.reach());
    assertTrue(giant.warnings().get(1).startsWith("This is a scaling guess"));
    assertTrue(
        value(giant.standardErrorOfNew()) > value(outside.standardErrorOfNew())
            && value(outside.standardErrorOfNew()) > value(inside.standardErrorOfNew()));
  }

  @Test
  void aCorrectionMovesTheEstimateOnly() {
    FittedLine line = value(desk(animals()).line(MASS));
    SizeEstimate median = value(line.estimate(Map.of("femur.GL", 150.0)));
    SizeEstimate mean =
        value(line.withCorrection(Correction.LOGNORMAL).estimate(Map.of("femur.GL", 150.0)));
    double factor = value(line.corrections()).lognormal();
    assertEquals(median.estimate() * factor, mean.estimate(), 1e-9); // rounding
    assertEquals(median.prediction(), mean.prediction());
    assertEquals(factor, mean.factor(), 0);
  }

  @Test
  void whatCantBeAskedSaysWhy() {
    SizeDesk desk = desk(animals());
    assertEquals(
        "No animal on the shelf has \"femur.Bd\".",
        reason(desk.line(SizeQuestion.of("body_mass", "femur.Bd"))));
    assertEquals(
        "\"GL\" is measured on several elements.",
        reason(desk.line(SizeQuestion.of("body_mass", "GL"))));
    assertEquals(
        "\"femur.GL\" is asked from itself.",
        reason(desk.line(SizeQuestion.of("femur.GL", "femur.GL"))));
    assertEquals(
        "No animal has body_length together with [femur.GL].",
        reason(desk.line(SizeQuestion.of("body_length", "femur.GL"))));
    assertEquals(
        "A line with 1 predictor(s) can't be fitted to 2 row(s).",
        reason(desk(animals().subList(0, 2)).line(MASS)));
    assertEquals("A line across taxa needs a tree.", reason(desk.line(withLine(LineMethod.PGLS))));
    assertEquals(
        "A major axis has one predictor, got 2.",
        reason(desk.line(withLine(LineMethod.SMA).withFrom(List.of("femur.GL", "humerus.GL")))));
  }

  @Test
  void aTreeWithUnderFourOfTheTaxaGivesNoLine() {
    assertEquals(
        "2 tip(s) of the tree have animals.",
        reason(
            desk(animals())
                .line(
                    withLine(LineMethod.PGLS),
                    LineTree.of(
                        value(Newick.read("((Ovis_aries:1,Capra.hircus:1):1,Bos:2,Sus:2);"))))));
  }

  @Test
  void aZeroOnTheShelfIsNamedWithItsAnimal() {
    List<Animal> animals = animals();
    animals.add(
        TableShelf.withMass(
            TableShelf.animal("Z1", "", TableShelf.bone(FEMUR, Side.LEFT, Map.of(GL, -3.0))),
            10,
            "",
            Set.of()));
    assertEquals("Z1: femur.GL is -3.0, which has no logarithm.", reason(desk(animals).line(MASS)));
  }

  @Test
  void bonesThatCantBeEstimatedSayWhy() {
    FittedLine line = value(desk(animals()).line(MASS));
    assertEquals(
        "femur.GL of \"0.0\" can't be used on this line.",
        reason(line.estimate(Map.of("femur.GL", 0.0))));
    assertEquals(
        "femur.GL of \"-4.0\" can't be used on this line.",
        reason(line.estimate(Map.of("femur.GL", -4.0))));
    assertEquals("The bone has no femur.GL.", reason(line.estimate(Map.of())));
    assertEquals(
        "The bone has no femur.GL.",
        reason(line.estimate(TableShelf.inHand("humerus", Optional.empty(), "GL", 90))));
    BoneInHand calf = TableShelf.inHand("femur", Optional.empty(), "GL", 150);
    BoneInHand young =
        new BoneInHand(
            "calf",
            Optional.empty(),
            FEMUR,
            Side.LEFT,
            calf.portion(),
            new BoneState(Fusion.UNFUSED, Fusion.CANT_SEE, Set.of()),
            calf.values());
    assertEquals("Bone calf is young, damaged, a cast or the like.", reason(line.estimate(young)));
  }

  @Test
  void bandsAreDrawnForOnePredictorOnly() {
    SizeDesk desk = desk(animals());
    LineBand band = value(value(desk.line(MASS)).band(150));
    SizeEstimate same = value(value(desk.line(MASS)).estimate(Map.of("femur.GL", 150.0)));
    assertEquals(same.estimate(), band.fit(), 0);
    assertEquals(value(same.prediction()), band.prediction());
    assertEquals(
        "A line with several predictors has no flat picture.",
        reason(value(desk.line(MASS.withFrom(List.of("femur.GL", "humerus.GL")))).band(150)));
  }

  @Test
  void checksOfALineNameWhatEachTaxonDoes() {
    LineChecks checks = value(value(desk(animals()).line(MASS)).checks());
    assertEquals(2, checks.taxa().size());
    assertEquals(6, checks.taxa().get(0).animals());
    assertEquals(12, value(checks.coverage()).inside().tries());
    assertTrue(value(checks.normality()).p() > 0.01);
    assertEquals(1, value(checks.robust()).slopes().size());
  }

  @Test
  void severalBonesAreUsedTogetherWhereEnoughAnimalsHaveThem() {
    SizeQuestion both = MASS.withFrom(List.of("femur.GL", "humerus.GL"));
    SeveralBones twelve = value(desk(animals()).severalBones(both));
    assertEquals(2, twelve.best().slopes().size());
    assertEquals(1, twelve.bestSingle().slopes().size());
    double joint = value(twelve.best().pressRootMeanSquare());
    double single = value(twelve.bestSingle().pressRootMeanSquare());
    assertEquals(100 * (1 - joint / single), twelve.gainPercent(), 1e-9); // rounding
    SeveralBones nine = value(desk(animals().subList(0, 9)).severalBones(both));
    assertEquals(1, nine.best().slopes().size());
    assertEquals(0, nine.gainPercent(), 0);
  }

  @Test
  void bonesOfUnlikeSizeCantBeOneAnimal() {
    SizeDesk desk = desk(animals());
    BoneInHand femur = TableShelf.inHand("femur", Optional.empty(), "GL", 150);
    assertEquals(
        List.of(),
        desk.oneAnimal(Set.of())
            .among(List.of(femur, TableShelf.inHand("humerus", Optional.empty(), "GL", 120))));
    assertEquals(
        1,
        desk.oneAnimal(Set.of())
            .among(List.of(femur, TableShelf.inHand("humerus", Optional.empty(), "GL", 140)))
            .size());
  }

  @Test
  void anUndecidedTaxonGivesTheMixtureOfItsLines() {
    SizeDesk desk = desk(animals());
    BoneInHand bone = TableShelf.inHand("femur", Optional.empty(), "GL", 150);
    TaxonName sheep = new TaxonName("Ovis aries");
    TaxonName goat = new TaxonName("Capra hircus");
    UndecidedTaxon one = desk.undecided(MASS, bone, Map.of(sheep, 0.4));
    SizeEstimate alone = value(value(desk.line(MASS.withTaxa(Set.of(sheep)))).estimate(bone));
    // One candidate: the mixture is its line; 1e-6 g: found by halving.
    assertEquals(
        value(alone.prediction()).lower(), value(one.mixture()).prediction().lower(), 1e-6);
    UndecidedTaxon both = desk.undecided(MASS, bone, Map.of(sheep, 0.5, goat, 0.4));
    assertEquals(2, both.byTaxon().size());
    assertTrue(value(both.mixture()).median() > 0);
    assertEquals(
        "No taxon on the shelf fits this bone, so no line holds for it.",
        reason(desk.undecided(MASS, bone, Map.of()).mixture()));
    assertEquals(
        "Candidates with a share of 50 in 100 have no line of their own.",
        reason(
            desk.undecided(MASS, bone, Map.of(sheep, 0.5, new TaxonName("Lama glama"), 0.5))
                .mixture()));
  }

  @Test
  void digitsStopWhereTheIntervalBegins() {
    // Half width 250: two of its digits stand, so tens.
    assertEquals("1230", HonestDigits.of(1000, 1500).text(1234.56));
    assertEquals("0.123", HonestDigits.of(0.10, 0.15).text(0.12345));
    assertEquals("123000", HonestDigits.of(100000, 150000).text(123456));
    // A lopsided interval: tens stand, but the short end keeps two digits of its own.
    assertEquals("110", HonestDigits.of(6.21, 1950).text(109.8));
    assertEquals("6.2", HonestDigits.of(6.21, 1950).text(6.21));
  }

  @Test
  void theMethodsParagraphNamesSampleFormulaIntervalAndCorrection() {
    FittedLine line = value(desk(animals()).line(MASS)).withCorrection(Correction.SMEARING);
    String text = MethodsParagraph.of(line, name -> name, "0.1.0");
    for (String part :
        List.of(
            "body_mass was estimated from femur.GL by ordinary least squares on natural logarithms",
            "n = 12 animals, one row each: Capra hircus, Ovis aries; femur.GL 100 to 210",
            "ln body_mass = ",
            "on 10 degrees of freedom",
            "95 % prediction intervals",
            "smearing factor (Duan 1983), ",
            "Comparanda 0.1.0.")) {
      assertTrue(text.contains(part), part + " | " + text);
    }
  }

  private static SizeQuestion withLine(LineMethod method) {
    return new SizeQuestion("body_mass", List.of("femur.GL"), Set.of(), method, LineScale.LN, 0.95);
  }

  private static <T> T value(Outcome<T> outcome) {
    return outcome.fold(
        v -> v,
        none -> {
          throw new AssertionError(none.reason());
        });
  }

  private static String reason(Outcome<?> outcome) {
    return outcome.fold(Object::toString, none -> none.reason());
  }
}
