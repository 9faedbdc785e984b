package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideSet;
import org.comparanda.outside.OutsideTable;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shelves made of outside data, put through the facade as command line and Bench do. */
class OutsideTrialTest {
  private static final ComparisonRules AS_OUTSIDE =
      ComparisonRules.withDefaults().withMethod(Method.LINEAR).withScale(Scale.RAW);

  private static Comparison compare(OutsideSet set, ComparisonRules rules) {
    return OutsideShelf.compare(OutsideShelf.of(set), rules);
  }

  // R 4.2.2, MASS 7.3-58.2, predict(lda(X, species, prior, tol = 1e-8), newdata); file
  // c_microtus_unidentified.csv. 1e-6: as asked for of the whole program; the sums differ in order.
  @Test
  void unidentifiedVolesGetTheOutsideClassAndPosterior() {
    OutsideSet reference = OutsideSet.named("microtus_ref");
    Comparison voles = compare(reference, AS_OUTSIDE);
    OutsideCheck check =
        OutsideCheck.named(
            "suggestion-voles", "R 4.2.2, MASS 7.3-58.2, lda: c_microtus_unidentified.csv");
    OutsideTable bones = OutsideTable.read("data/microtus_unidentified.csv");
    OutsideTable expected =
        OutsideTable.read("expected/c_microtus_unidentified.csv").where("prior", "equal");
    assertEquals(199, expected.rows().size());
    for (OutsideTable.Row row : expected.rows()) {
      OutsideTable.Row bone = bones.where("id", row.text("id")).rows().get(0);
      Suggestion suggestion =
          voles.suggest(
              OutsideShelf.inHand(
                  row.text("id"),
                  Optional.empty(),
                  OutsideShelf.bone(
                      Side.NOT_KNOWN,
                      reference.variables(),
                      OutsideSet.values(bone, reference.variables()))));
      check.exact(
          row.text("id") + " class",
          row.text("lda_class"),
          suggestion.taxa().get(0).taxon().value());
      for (TaxonFit fit : suggestion.taxa()) {
        check.absolute(
            row.text("id") + " posterior of " + fit.taxon(),
            row.number("lda_posterior_" + fit.taxon()),
            fit.share(),
            1e-6);
      }
    }
  }

  // R 4.2.2, MASS 7.3-58.2, lda(CV = TRUE): c_confusion.csv, counts exact
  @ParameterizedTest
  @ValueSource(
      strings = {
        "iris",
        "penguins",
        "crabs",
        "microtus_ref",
        "wolves_group",
        "wolves_location",
        "midge",
        "mouse_t2_5",
        "mouse_t2_15",
        "penguins_species_sex"
      })
  void trialGivesTheOutsideHitTable(String name) {
    Trial trial = compare(OutsideSet.named(name), AS_OUTSIDE).trial(OutsideShelf.ELEMENT);
    OutsideCheck check =
        OutsideCheck.named(
            "suggestion-trial-" + name.replace('_', '-'),
            "R 4.2.2, MASS 7.3-58.2, lda(CV = TRUE), equal priors: c_confusion.csv");
    OutsideTable expected =
        OutsideTable.read("expected/c_confusion.csv")
            .where("set", name)
            .where("method", "lda")
            .where("prior", "equal")
            .where("mode", "loo");
    assertTrue(expected.rows().size() >= 4, name);
    for (OutsideTable.Row row : expected.rows()) {
      int ours =
          trial
              .table()
              .getOrDefault(new TaxonName(row.text("true")), Map.of())
              .getOrDefault(new TaxonName(row.text("assigned")), 0);
      check.exact(row.text("true") + " called " + row.text("assigned"), row.count("count"), ours);
    }
  }

  // R 4.2.2: e_animal_out.csv, lda; both sides of the animal removed before fitting
  @ParameterizedTest
  @ValueSource(strings = {"crabs", "wolves_group", "wolves_location"})
  void leftAndRightAsRowsAreHeldOutByAnimal(String name) {
    Trial trial =
        OutsideShelf.compare(twoSides(name), AS_OUTSIDE.withCounting(Counting.BONES))
            .trial(OutsideShelf.ELEMENT);
    OutsideTable.Row expected =
        OutsideTable.read("expected/e_animal_out.csv")
            .where("set", name)
            .where("method", "lda")
            .rows()
            .get(0);
    OutsideCheck check =
        OutsideCheck.named(
            "suggestion-animal-out-" + name.replace('_', '-'),
            "R 4.2.2, MASS 7.3-58.2, lda without both sides: e_animal_out.csv");
    check.exact("animals", expected.count("animals"), trial.animals());
    check.exact("bones", expected.count("specimens"), trial.hits().tries());
    check.exact("hits", expected.count("leave_one_animal_out"), trial.hits().hits());
  }

  @Test
  void theAnimalIsTheUnitUnlessBonesAreAskedFor() {
    Trial trial = OutsideShelf.compare(twoSides("crabs"), AS_OUTSIDE).trial(OutsideShelf.ELEMENT);
    assertEquals(200, trial.animals());
    assertEquals(200, trial.hits().tries());
    assertEquals(400, trial.bones().tries());
    assertEquals(400, trial.rows().size());
  }

  /** Specimen = measurement + noise / 100 (crabs) or / 10 (wolves), as PROVENANCE.md says. */
  private static Shelf twoSides(String name) {
    boolean crabs = name.equals("crabs");
    OutsideSet set = OutsideSet.named(name);
    OutsideTable noise =
        OutsideTable.read(crabs ? "data/crabs_side_noise.csv" : "data/wolves_side_noise.csv");
    double unit = crabs ? 0.01 : 0.1;
    Map<Integer, List<ShelfBone>> bones = new TreeMap<>();
    for (int i = 0; i < noise.rows().size(); i++) {
      OutsideTable.Row row = noise.rows().get(i);
      double[] values = set.rows().row(i / 2);
      for (int j = 0; j < values.length; j++) {
        values[j] += unit * row.number(noiseColumn(row, j));
      }
      Side side = row.text("side").equals("L") ? Side.LEFT : Side.RIGHT;
      bones
          .computeIfAbsent(i / 2, a -> new ArrayList<>())
          .add(OutsideShelf.bone(side, set.variables(), values));
    }
    List<Animal> animals = new ArrayList<>();
    bones.forEach(
        (row, both) ->
            animals.add(
                OutsideShelf.animal(
                    OutsideShelf.id(row), set.classes().get(set.rows().group(row)), both)));
    return new Shelf(animals);
  }

  private static String noiseColumn(OutsideTable.Row row, int j) {
    return row.cells().getHeader().get(j + 2);
  }

  // Bars of the job: strangers and known animals, all four to hold together
  @Test
  void strangersAreKeptOutAndKnownAnimalsLetIn() {
    assertBars(withoutMass(), 0.035, 0.90, 0.85, 1.10);
    assertBars(OutsideSet.named("crabs"), 0.090, 0.78, 0.84, 1.20);
    assertBars(OutsideSet.named("iris"), 0.487, 0.43, 0.56, 1.50);
  }

  private static OutsideSet withoutMass() {
    return OutsideSet.of(
        "penguins", "penguins", "species", List.of("bill_length", "bill_depth", "flipper_length"));
  }

  private static void assertBars(
      OutsideSet set, double mostFitsOne, double leastNothing, double leastKnown, double longest) {
    StrangerTrial trial =
        compare(set, ComparisonRules.withDefaults()).strangers(OutsideShelf.ELEMENT);
    StrangerTrial.Stranger stranger = trial.stranger();
    double bones = stranger.bones();
    assertEquals(set.rows().rows(), stranger.bones());
    // 0.0005: the bars are given to three digits
    assertTrue(stranger.fitsOne() / bones <= mostFitsOne + 0.0005, trial.stranger().toString());
    assertTrue(stranger.nothingFits() / bones >= leastNothing, trial.stranger().toString());
    assertTrue(
        trial.known().fitsOneRight() / (double) trial.known().bones() >= leastKnown,
        trial.known().toString());
    Trial.ListQuality lists = trial.trial().calibratedList().value().orElseThrow();
    assertTrue(lists.holdsTruth().rate().orElseThrow() >= 0.93, lists.toString());
    assertTrue(lists.meanLength() <= longest, lists.toString());
  }

  @Test
  void aShelfBoneOnTheBenchAnswersAsItsRowInTheTrial() {
    for (ComparisonRules rules :
        List.of(ComparisonRules.withDefaults(), AS_OUTSIDE.withPriors(Priors.shelf()))) {
      Shelf shelf = twoSides("wolves_group");
      Comparison comparison = OutsideShelf.compare(shelf, rules);
      Trial trial = comparison.trial(OutsideShelf.ELEMENT);
      int row = 0;
      for (Animal animal : shelf.animals()) {
        for (ShelfBone bone : animal.bones()) {
          TrialRow expected = trial.rows().get(row++);
          Suggestion ours =
              comparison.suggest(OutsideShelf.inHand("x", Optional.of(animal.id()), bone));
          assertEquals(expected.animal(), animal.id());
          assertEquals(expected.suggested(), Optional.of(ours.taxa().get(0).taxon()));
          assertEquals(expected.share().value(), Optional.of(ours.taxa().get(0).share()));
          assertEquals(expected.typicality().value(), Optional.of(ours.taxa().get(0).typicality()));
          assertEquals(
              expected.beforeGate(),
              ours.answer() == Answer.NEVER_TESTED ? Answer.FITS_ONE : ours.answer());
          assertEquals(Optional.of(animal.id()), ours.basis().leftOut());
        }
      }
      assertEquals(50, row);
    }
  }

  // The floor and the mean are a hand calculation on the rows that the trial itself lists
  @Test
  void logScoreIsTheMeanLogOfTheTrueShare() {
    OutsideSet set = OutsideSet.named("midge");
    Trial trial = compare(set, AS_OUTSIDE).trial(OutsideShelf.ELEMENT);
    double sum = 0;
    for (TrialRow row : trial.rows()) {
      double largest = row.share().value().orElseThrow();
      sum += Math.log(row.hit() ? largest : 1 - largest); // two taxa: the rest is the other's
    }
    // 1e-12: 1 − share loses digits against the share itself
    assertEquals(sum / 15, trial.logScore().value().orElseThrow(), 1e-12);
  }

  @Test
  void anUnknownElementHasAnEmptyTrial() {
    Comparison iris = compare(OutsideSet.named("iris"), AS_OUTSIDE);
    Trial trial =
        iris.trial(new org.comparanda.bone.ElementKey("rib"), List.of(new MeasurementCode("GL")));
    assertEquals(0, trial.animals());
    assertEquals(List.of(), trial.rows());
  }
}
