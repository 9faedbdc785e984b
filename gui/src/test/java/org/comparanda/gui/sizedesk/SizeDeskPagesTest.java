package org.comparanda.gui.sizedesk;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What lies behind "More" and on the further pages. Animals are invented. */
class SizeDeskPagesTest {
  private static final String OWN =
      """
      {"equations": [{"key": "own-jaw", "name": "invented", "taxon": "Crocodylia",
      "appliesTo": "invented", "predicts": "body_length", "resultUnit": "cm", "element": "mandible",
      "code": "ML", "predictor": "jaw", "predictorUnit": "mm", "form": "FACTOR", "logBase": null,
      "intercept": 0, "coefficient": 0.8, "validFrom": 200, "validTo": 500, "n": null,
      "standardError": null, "rSquared": null, "citation": "%s", "howVerified": "invented",
      "verified": true, "caution": "", "worked": [], "exponent": null}]}
      """;

  @TempDir Path folder;
  private final SizeDeskViewModel desk =
      new SizeDeskViewModel(
          SizeDeskViewModelTest.room(InventedShelf.withFemora()), Runnable::run, Runnable::run);

  @BeforeEach
  void aJawOfFourHundred() {
    desk.refresh();
    desk.askFor("body_length", "mandible.ML");
    desk.readings().readingProperty().set("400");
    desk.readings().read();
  }

  private AnswerText answer() {
    return desk.shownProperty().get().answer();
  }

  @Test
  void anotherLevelMakesAnotherIntervalAndIsNamed() {
    desk.choices().atLevel("80");
    assertTrue(answer().sentence().contains("(80 % for one animal)"), answer().sentence());
    assertEquals(0.8, desk.askProperty().get().orElseThrow().choice().level(), 1e-12); // decimals
    for (String typed : List.of("0", "100", "abc", "-5", "")) {
      desk.choices().atLevel(typed);
      assertTrue(desk.choices().problemProperty().get().contains("\"" + typed + "\""), typed);
      assertTrue(answer().sentence().contains("(80 %"), typed);
    }
  }

  @Test
  void aCorrectionIsNamedWithItsFactorAndLeftAsideWhereTheLineHasNone() {
    desk.choices().correctBy(Correction.SMEARING);
    assertTrue(answer().detail().contains("smearing factor 1.0"), answer().detail());
    desk.choices().fitBy(LineMethod.SMA);
    assertTrue(answer().sentence().endsWith("without an interval."), answer().sentence());
    assertTrue(answer().detail().contains("Not corrected"), answer().detail());
  }

  @Test
  void aLineReadBackwardsSaysSo() {
    desk.choices().fitBy(LineMethod.INVERSE);
    assertTrue(answer().sentence().contains("95 % for one animal"), answer().sentence());
    assertTrue(
        answer().cautions().stream().anyMatch(c -> c.contains("Fieller's")),
        answer().cautions().toString());
  }

  @Test
  void aLineOnATreeNeedsATreeAndFourTaxaAndSaysWhichItLacks() throws IOException {
    desk.choices().fitBy(LineMethod.PGLS);
    assertEquals("A line across taxa needs a tree.", answer().sentence());
    Path tree =
        Files.writeString(
            folder.resolve("two.nwk"), "(Crocodylus_palustris:1,Gavialis_gangeticus:1);");
    desk.choices().climb(tree);
    assertTrue(answer().sentence().contains("2 tip(s)"), answer().sentence());
    assertEquals(
        "two.nwk", desk.askProperty().get().orElseThrow().choice().tree().orElseThrow().name());
    desk.choices().climb(Files.writeString(folder.resolve("bad.nwk"), "((("));
    assertFalse(desk.choices().problemProperty().get().isBlank());
    desk.choices().climb(folder.resolve("missing.nwk"));
    assertTrue(desk.choices().problemProperty().get().contains("\"missing.nwk\""));
  }

  @Test
  void aFurtherBoneIsTakenTogetherWithTheJawAndTheGainIsTold() {
    addFemur("133");
    SizeShown shown = desk.shownProperty().get();
    assertAll(
        () -> assertTrue(answer().sentence().contains("95 %"), answer().sentence()),
        () ->
            assertTrue(answer().detail().contains("All measurements together"), answer().detail()),
        () -> assertEquals(2, shown.numbers().size(), shown.numbers().toString()),
        () -> assertEquals("Body length by the line (m)", shown.figure().orElseThrow().x().title()),
        () -> assertTrue(shown.table().startsWith("animal,taxon,drawer,mandible.ML [mm],femur.GL")),
        () -> assertTrue(shown.methods().contains("Femur GL"), shown.methods()));
  }

  @Test
  void bonesOfUnlikeSizeCannotBeOneAnimal() {
    addFemur("240");
    assertTrue(answer().cautions().get(0).startsWith("Cannot be one animal:"), answer().toString());
    desk.readings().remove(desk.readings().further().get(0));
    assertFalse(answer().cautions().toString().contains("Cannot be one animal"));
  }

  @Test
  void theSameMeasurementTwiceIsSaidAndUsedOnce() {
    addFemur("133");
    desk.readings().further().get(0).quantityProperty().set(desk.study().quantity("mandible.ML"));
    assertTrue(desk.readings().problemProperty().get().contains("asked twice"));
    assertEquals(List.of("mandible.ML"), desk.askProperty().get().orElseThrow().allFrom());
  }

  private void addFemur(String reading) {
    desk.readings().addFurther();
    FurtherReading femur = desk.readings().further().get(0);
    femur.quantityProperty().set(desk.study().quantity("femur.GL"));
    femur.textProperty().set(reading);
    desk.readings().read();
  }

  @Test
  void trustIsToldOnlyWhileSomebodyLooks() {
    assertTrue(desk.trust().lines().isEmpty());
    desk.trust().open();
    Set<String> looked =
        desk.trust().lines().stream().map(CheckLine::what).collect(Collectors.toSet());
    assertTrue(
        looked.containsAll(
            Set.of(
                "Held-out coverage",
                "Normal residuals (Shapiro and Wilk)",
                "Equal spread (Breusch and Pagan)",
                "Robust line (trimmed), as a check",
                "Without Crocodylus palustris (8)",
                "Who pulls the line most")),
        looked.toString());
    desk.choices().fitBy(LineMethod.SMA);
    assertEquals(1, desk.trust().lines().size());
    assertTrue(desk.trust().lines().get(0).found().contains("ordinary line"));
  }

  @Test
  void onesOwnEquationGivesItsValueAndItsErrorOnTheShelfsOwnAnimals() throws IOException {
    desk.equations().open();
    desk.equations().addFrom(file("own.json", OWN.formatted("Invented 2026")));
    EquationShown shown = desk.equations().shownProperty().get();
    // By hand: 0.8 · 400 mm = 320 cm. Twelve animals: broad ones are 8 jaws long, give or take
    // wobble w, so 100·|w − 1| %; slender ones 5 jaws, 100·|0.625·w − 1| %. Sorted: 1, 2, 3, 3, 4,
    // 5, 6, 7, then 33.75 and more, so the median is (5 + 6)/2.
    assertAll(
        () ->
            assertEquals(
                "Body length 320 cm, without an interval: its source gives no error.",
                shown.answer()),
        () ->
            assertTrue(
                shown
                    .onShelf()
                    .get(0)
                    .startsWith("On your 12 animals this equation is off by a median of 5.5 %"),
                shown.onShelf().toString()),
        () -> assertTrue(shown.facts().toString().contains("200 to 500 mm"), shown.toString()));
    desk.equations().measuredProperty().set("600");
    desk.equations().read();
    assertTrue(
        desk.equations()
            .shownProperty()
            .get()
            .cautions()
            .get(0)
            .startsWith("The bone lies outside the published range"));
  }

  @Test
  void anEquationWithoutCitationIsRefusedAndTheOthersStay() throws IOException {
    desk.equations().open();
    int before = desk.equations().known().size();
    desk.equations().addFrom(file("uncited.json", OWN.formatted("")));
    String said = desk.equations().problemProperty().get();
    assertTrue(said.contains("uncited.json, equations row 1, field citation"), said);
    assertEquals(before, desk.equations().known().size());
  }

  @Test
  void anUndecidedTaxonGetsTheMixtureOfItsLines() {
    desk.undecided().open();
    assertEquals(
        List.of(InventedShelf.BROAD, InventedShelf.SLENDER),
        desk.undecided().rows().stream().map(ShareRow::taxon).toList());
    assertTrue(desk.undecided().answerProperty().get().sentence().contains("No taxon has a share"));
    desk.undecided().equalShares();
    String mixture = desk.undecided().answerProperty().get().sentence();
    assertTrue(mixture.startsWith("Body length "), mixture);
    assertTrue(
        desk.undecided().rows().stream()
            .allMatch(r -> r.estimateProperty().get().contains("95 %")));
    desk.undecided().rows().get(0).shareProperty().set("much");
    desk.undecided().mix();
    assertEquals("\"much\" is no share.", desk.undecided().answerProperty().get().sentence());
  }

  @Test
  void oneCandidateAloneIsItsOwnLine() {
    desk.undecided().open();
    desk.undecided().rows().get(0).shareProperty().set("0.7");
    desk.undecided().mix();
    desk.choose(Set.of(new TaxonName("Crocodylus palustris")));
    desk.undecided().mix();
    assertEquals(answer().sentence(), desk.undecided().answerProperty().get().sentence());
  }

  @Test
  void whatTheBoneIsCanBeSaidForATree() {
    desk.choices().sayTaxon(Optional.of(InventedShelf.SLENDER));
    assertEquals(
        Optional.of(InventedShelf.SLENDER),
        desk.askProperty().get().orElseThrow().choice().boneTaxon());
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }
}
