package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableOutcome;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.reference.Animal;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

/**
 * The simulated Harrowmere trays against their truths, which were written from the scenario before
 * any answer was known (demo-data/truth.csv).
 */
class DemoTruthTest {
  private static final Path DEMO = Path.of("..", "demo-data");
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final TableReader READER =
      TableReader.of(
          TABLES.protocol(),
          TABLES.taxa(),
          TableOptions.withDefaults().withUnitDoubt(TableOptions.UnitDoubt.TAKE_AS_IS));
  private static final Shelf SHELF = read(READER.shelf(DEMO.resolve("shelf.csv")));

  private static <T> T read(TableOutcome<T> outcome) {
    return outcome.fold(
        TableRead::content,
        refused -> {
          throw new AssertionError(refused.toString());
        });
  }

  private static final Map<String, Map<String, Suggestion>> ANSWERS =
      Stream.of("easy", "hard", "messy", "fossil")
          .collect(Collectors.toUnmodifiableMap(tray -> tray, DemoTruthTest::answersAfresh));

  private static Map<String, Suggestion> answers(String tray) {
    return ANSWERS.getOrDefault(tray, Map.of());
  }

  private static Map<String, Suggestion> answersAfresh(String tray) {
    BoneAge age = tray.equals("fossil") ? BoneAge.FOSSIL : BoneAge.RECENT;
    Comparison comparison =
        Comparison.of(
            SHELF, TABLES.protocol(), TABLES.taxa(), ComparisonRules.withDefaults().withAge(age));
    Map<String, Suggestion> answers = new LinkedHashMap<>();
    for (BoneInHand bone :
        read(READER.bones(SHELF, DEMO.resolve("tray-" + tray + ".csv"))).toList()) {
      answers.put(bone.id(), comparison.suggest(bone));
    }
    return answers;
  }

  @Test
  void everyBoneIsAnsweredAsTheScenarioSays() throws IOException {
    Map<String, Suggestion> answers = new LinkedHashMap<>();
    Stream.of("easy", "hard", "messy", "fossil").forEach(tray -> answers.putAll(answers(tray)));
    int compared = 0;
    try (var truths = CsvReader.builder().ofNamedCsvRecord(DEMO.resolve("truth.csv"))) {
      for (NamedCsvRecord truth : truths) {
        Suggestion ours = answers.get(truth.getField("bone"));
        assertEquals(truth.getField("answer"), ours.answer().name(), truth.toString());
        if (ours.answer() == Answer.FITS_ONE || ours.answer() == Answer.FITS_A_FEW) {
          TaxonName taxon = new TaxonName(truth.getField("taxon"));
          assertTrue(ours.candidates().contains(taxon), truth.toString());
        }
        compared++;
      }
    }
    assertEquals(answers.size(), compared);
  }

  @Test
  void strangerIsTurnedAwayWhateverItsShare() {
    Suggestion stranger = answers("hard").get("K-206");
    assertEquals(Answer.NOTHING_FITS, stranger.answer());
    assertTrue(stranger.taxa().get(0).share() > 0.9);
    assertTrue(stranger.sentence().endsWith("If this could be human, press STOP."));
    assertEquals(List.of(), stranger.warnings(), "every reading is inside the shelf's range");
    assertEquals(List.of(), stranger.next());
    assertEquals(stranger.taxa().size(), stranger.drawer().size());
    assertEquals(3, stranger.nearest().size());
  }

  @Test
  void giantAndDwarfAreToldBySizeNotByProportions() {
    Map<String, Suggestion> hard = answers("hard");
    assertTrue(
        hard.get("K-209")
            .details()
            .contains(
                "By proportions it fits Crocodylus palustris or Crocodylus niloticus, by size it"
                    + " doesn't."),
        hard.get("K-209").details().toString());
    assertTrue(
        hard.get("K-210")
            .details()
            .contains("By proportions it fits Testudo graeca, by size it doesn't."),
        hard.get("K-210").details().toString());
  }

  // Job.md 5.7: said where they disagree, and not beside an ordinary sheep, goat or deer.
  @Test
  void ordinaryBonesAreNotToldThatTheirSizeDisagrees() {
    answers("easy").values().forEach(s -> assertFalse(disagrees(s), s.toString()));
    List<String> told =
        answers("hard").values().stream()
            .filter(DemoTruthTest::disagrees)
            .map(Suggestion::bone)
            .toList();
    assertEquals(List.of("K-209", "K-210"), told);
  }

  // Such a size has a chance below 0.05 by the rule, so of the shelf's own animals fewer than 1 in
  // 20 may be told so.
  @Test
  void fewerThanOneInTwentyOfTheShelfsOwnSheepAreToldSo() {
    Comparison comparison =
        Comparison.of(SHELF, TABLES.protocol(), TABLES.taxa(), ComparisonRules.withDefaults());
    List<Suggestion> sheep =
        SHELF.animals().stream()
            .filter(a -> a.taxon().equals(Optional.of(new TaxonName("Ovis aries"))))
            .flatMap(
                a -> a.bones().stream().map(b -> OutsideShelf.inHand("x", Optional.of(a.id()), b)))
            .map(comparison::suggest)
            .filter(s -> !s.withoutSize().isEmpty())
            .toList();
    long told = sheep.stream().filter(DemoTruthTest::disagrees).count();
    assertTrue(sheep.size() > 100, sheep.size() + " bones");
    assertTrue(20 * told < sheep.size(), told + " of " + sheep.size());
  }

  private static boolean disagrees(Suggestion s) {
    return s.details().stream().anyMatch(d -> d.startsWith("By proportions it fits"));
  }

  @Test
  void sizeAdjustedStandsBesideProportionsForGiantAndDwarf() {
    Map<String, Suggestion> hard = answers("hard");
    for (String bone : List.of("K-209", "K-210")) {
      Suggestion s = hard.get(bone);
      assertEquals(
          s.taxa().stream().map(TaxonFit::taxon).toList(),
          s.withoutSize().stream().map(SizeFreeFit::taxon).toList());
    }
    // The same typicality by the other way: the comparison on proportions alone. 1e-9: the
    // contrasts
    // are taken of the rows there, of the moments here.
    Comparison proportions =
        Comparison.of(
            SHELF,
            TABLES.protocol(),
            TABLES.taxa(),
            ComparisonRules.withDefaults().withScale(Scale.PROPORTIONS));
    BoneInHand giant =
        read(READER.bones(SHELF, DEMO.resolve("tray-hard.csv"))).toList().stream()
            .filter(b -> b.id().equals("K-210"))
            .findFirst()
            .orElseThrow();
    List<SizeFreeFit> beside = hard.get("K-210").withoutSize();
    assertTrue(beside.size() >= 2, beside.toString());
    for (TaxonFit fit : proportions.suggest(giant).taxa()) {
      SizeFreeFit ours =
          beside.stream().filter(f -> f.taxon().equals(fit.taxon())).findFirst().orElseThrow();
      assertEquals(fit.typicality(), ours.byProportions(), 1e-9, ours.toString());
    }
    // Island giants don't lie on the line along which single tortoises differ.
    assertTrue(
        hard.get("K-210")
            .details()
            .contains(
                "Such a size is not reached the way animals of one kind differ on the shelf."),
        hard.get("K-210").details().toString());
  }

  @Test
  void fossilsAreNeverGivenABareSpecies() {
    answers("fossil")
        .values()
        .forEach(
            s ->
                s.proposal()
                    .ifPresent(
                        name -> {
                          assertTrue(name.sign() != ProposedName.Sign.NONE, s.sentence());
                          assertTrue(!name.taxon().value().contains(" "), s.sentence());
                          assertTrue(
                              s.sentence()
                                  .toLowerCase(Locale.ROOT)
                                  .contains("nearest on the shelf"),
                              s.sentence());
                        }));
  }

  @Test
  void shelfBoneAnswersAsItsRowInTheTrialOfEveryElement() {
    Comparison comparison =
        Comparison.of(SHELF, TABLES.protocol(), TABLES.taxa(), ComparisonRules.withDefaults());
    for (ElementKey element : List.of(new ElementKey("humerus"), new ElementKey("mandible"))) {
      for (TrialRow row : comparison.trial(element).rows()) {
        Animal animal = SHELF.animal(row.animal()).orElseThrow();
        for (ShelfBone bone : animal.bones()) {
          if (bone.element().equals(element) && bone.side() == row.side()) {
            Suggestion ours =
                comparison.suggest(OutsideShelf.inHand("x", Optional.of(row.animal()), bone));
            assertEquals(
                row.beforeGate(),
                ours.answer() == Answer.NEVER_TESTED ? Answer.FITS_ONE : ours.answer(),
                ours.toString());
            assertEquals(
                row.typicality().value(),
                ours.taxa().stream().findFirst().map(TaxonFit::typicality),
                ours.toString());
          }
        }
      }
    }
  }
}
