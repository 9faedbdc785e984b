package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.reference.Animal;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.suggestion.Suggestion.Missing.Way;
import org.junit.jupiter.api.Test;

/**
 * What the Bench says where too few animals of the shelf have the whole set: penguins with the
 * holes of penguins_mask.csv, every ninth.
 */
class HolesTest {
  private static final OutsideSet PENGUINS = OutsideSet.named("penguins");
  private static final ComparisonRules RAW = ComparisonRules.withDefaults().withScale(Scale.RAW);
  private static final double[] GIANT = {80, 40, 400, 9000};

  /** Penguin 5 and every ninth after it, but no more than so many. */
  private static List<Animal> animals(int most) {
    OutsideTable mask = OutsideTable.read("data/penguins_mask.csv");
    List<Animal> animals = new ArrayList<>();
    for (int i = 4; i < PENGUINS.ids().size() && animals.size() < most; i += 9) {
      OutsideTable.Row holes = mask.where("id", PENGUINS.ids().get(i)).rows().get(0);
      List<String> codes =
          PENGUINS.variables().stream().filter(v -> holes.text(v).equals("1")).toList();
      int row = i;
      double[] values =
          codes.stream()
              .mapToDouble(c -> PENGUINS.rows().value(row, PENGUINS.variables().indexOf(c)))
              .toArray();
      animals.add(
          OutsideShelf.animal(
              OutsideShelf.id(i),
              PENGUINS.classes().get(PENGUINS.rows().group(i)),
              List.of(OutsideShelf.bone(Side.AXIAL, codes, values))));
    }
    return animals;
  }

  private static Comparison compare(ComparisonRules rules) {
    return OutsideShelf.compare(new Shelf(animals(100)), rules);
  }

  private static BoneInHand bone(double... values) {
    return OutsideShelf.inHand(
        "x",
        Optional.empty(),
        OutsideShelf.bone(Side.AXIAL, PENGUINS.variables().subList(0, values.length), values));
  }

  private static BoneInHand penguin(int row) {
    return bone(PENGUINS.rows().row(row));
  }

  // Python 3, scipy 1.17.1: the observed-data likelihood maximised without any expectation step,
  // see
  // scripts/missing-em.py. D2 1e-8 relative, shares 1e-8 absolute: the outside score is zero to
  // 2e-13, our steps end at 1e-12 of a standard deviation.
  @Test
  void sharesAreThoseOfTheMaximumThatAnotherProgramFinds() {
    OutsideCheck check =
        OutsideCheck.named(
            "suggestion-holes-penguins",
            "Python 3, scipy 1.17.1, optimize.root on the score: expected/d_missing_ml.csv");
    Comparison comparison = compare(RAW.withMethod(Method.LINEAR));
    OutsideTable expected = OutsideTable.read("expected/d_missing_ml.csv");
    int bones = 0;
    for (int i = 0; i < PENGUINS.ids().size(); i += 9) {
      String id = PENGUINS.ids().get(i);
      Suggestion ours = comparison.suggest(penguin(i));
      assertEquals(Way.FILLED, ours.basis().missing().way());
      for (TaxonFit fit : ours.taxa()) {
        OutsideTable one = expected.where("id", id).where("class", fit.taxon().value());
        check.relative(
            id + ", D2 from " + fit.taxon(),
            one.where("kind", "d2").rows().get(0).number("value"),
            fit.distanceSquared(),
            1e-8);
        check.absolute(
            id + ", share of " + fit.taxon(),
            one.where("kind", "share").rows().get(0).number("value"),
            fit.share(),
            1e-8);
      }
      bones++;
    }
    assertEquals(38, bones);
  }

  @Test
  void theAnswerSaysThatHolesWereFilledAndHowFarItsRanksReach() {
    Suggestion ours = compare(RAW).suggest(penguin(0));
    Suggestion.Missing missing = ours.basis().missing();
    assertEquals(Way.FILLED, missing.way());
    assertEquals(9, missing.wholeAnimals());
    assertEquals(Optional.of(1.0 / 38), missing.lowestTypicality());
    assertTrue(missing.words().contains("breakage isn't"), missing.words());
    assertTrue(
        ours.sampleLine()
            .contains(
                "37 animals. Only 9 animals have the whole set; holes of the others were filled"),
        ours.sampleLine());
    assertTrue(
        ours.details()
            .contains(
                "Typicality is a rank among 37 animals here and can't go below 0.026: nothing is"
                    + " ruled out, and a kind that the shelf lacks shows as a poor fit at most."),
        ours.details().toString());
    assertTrue(ours.calibratedLabel().contains("holes filled"), ours.calibratedLabel());
    assertEquals(List.of(), ours.withoutSize());
    assertTrue(ours.basis().method().startsWith("predictive"), ours.basis().method());
  }

  // Twice any penguin: it lies further out than all 37, and 1/38 is as low as a rank among them
  // goes.
  @Test
  void aBoneFarFromEverythingIsAPoorFitWhereRanksCannotSayMore() {
    Suggestion ours = compare(RAW).suggest(bone(GIANT));
    assertEquals(Answer.POOR_FIT, ours.answer());
    assertEquals(1.0 / 38, ours.taxa().get(0).typicality());
    assertEquals(List.of(), ours.drawer());
    assertTrue(ours.sentence().endsWith("If this could be human, press STOP."), ours.sentence());
  }

  @Test
  void enoughWholeAnimalsAreNeverFilledUp() {
    Suggestion ours = compare(RAW).suggest(bone(40, 18));
    assertEquals(Way.EXACT_SUBSET, ours.basis().missing().way());
    assertEquals(Optional.empty(), ours.basis().missing().lowestTypicality());
  }

  // No rank among 19 goes below 1/20, so they could not tell a stranger.
  @Test
  void tooFewAnimalsForRanksStayTooThin() {
    Comparison few = OutsideShelf.compare(new Shelf(animals(19)), RAW);
    assertEquals(Answer.SHELF_TOO_THIN, few.suggest(bone(GIANT)).answer());
  }

  @Test
  void aMethodThatNeedsWholeRowsStaysTooThin() {
    assertEquals(
        Answer.SHELF_TOO_THIN,
        compare(RAW.withMethod(Method.NEAREST)).suggest(penguin(0)).answer());
  }

  @Test
  void aTaxonThatNeverHadAMeasurementIsLeftOutByName() {
    List<Animal> more = new ArrayList<>(animals(100));
    for (int i = 0; i < 5; i++) {
      more.add(
          OutsideShelf.animal(
              OutsideShelf.id(1000 + i),
              "Giant",
              List.of(
                  OutsideShelf.bone(
                      Side.AXIAL, List.of("bill_length", "bill_depth"), 80 + i, 40))));
    }
    Suggestion ours = OutsideShelf.compare(new Shelf(more), RAW).suggest(penguin(0));
    List<TaxonFit> without = compare(RAW).suggest(penguin(0)).taxa();
    assertEquals(without.size(), ours.taxa().size());
    for (int i = 0; i < without.size(); i++) {
      assertEquals(without.get(i).taxon(), ours.taxa().get(i).taxon());
      // 1e-9: one group more, so the last digits of the sums differ.
      assertEquals(without.get(i).share(), ours.taxa().get(i).share(), 1e-9);
      assertEquals(without.get(i).typicality(), ours.taxa().get(i).typicality());
    }
    assertTrue(
        ours.basis().missing().words().endsWith("never measured on them: Giant."),
        ours.basis().missing().words());
  }

  @Test
  void theOrderOfAnimalsDoesNotMatter() {
    List<Animal> turned = new ArrayList<>(animals(100));
    Collections.reverse(turned);
    Suggestion ours = OutsideShelf.compare(new Shelf(turned), RAW).suggest(penguin(0));
    assertEquals(compare(RAW).suggest(penguin(0)), ours);
  }

  @Test
  void aShelfBoneAnswersAsItsRowInTheTrialAlsoWithHoles() {
    Comparison comparison = compare(RAW.withPriors(Priors.shelf()));
    Map<Way, Integer> ways = new EnumMap<>(Way.class);
    for (TrialRow row : comparison.trial(OutsideShelf.ELEMENT).rows()) {
      Animal animal = comparison.shelf().animal(row.animal()).orElseThrow();
      Suggestion ours =
          comparison.suggest(
              OutsideShelf.inHand("x", Optional.of(row.animal()), animal.bones().get(0)));
      ways.merge(ours.basis().missing().way(), 1, Integer::sum);
      assertEquals(
          row.beforeGate(), ours.answer() == Answer.NEVER_TESTED ? Answer.FITS_ONE : ours.answer());
      for (TaxonFit first : ours.taxa().stream().limit(1).toList()) {
        assertEquals(row.suggested(), Optional.of(first.taxon()));
        assertEquals(row.share().value(), Optional.of(first.share()));
        assertEquals(row.typicality().value(), Optional.of(first.typicality()));
      }
    }
    assertEquals(9, ways.get(Way.FILLED), "those with the whole set: " + ways);
    assertTrue(ways.get(Way.EXACT_SUBSET) > 10, ways.toString());
  }
}
