package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What else {@code size} can be asked, on the demo shelf (invented, simulated animals). */
class SizeReachTest {
  @TempDir Path folder;
  private Path shelf = Path.of("");

  @BeforeEach
  void shelf() {
    try (InputStream in =
        Objects.requireNonNull(
            SizeReachTest.class.getResourceAsStream("/org/comparanda/demo/shelf.csv"))) {
      shelf = folder.resolve("shelf.csv");
      Files.copy(in, shelf);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void bonesOfOneAnimalAreTakenTogetherWithTheGainOverTheBestSingleOne() throws IOException {
    Path bones =
        Files.writeString(
            folder.resolve("bones.csv"),
            "bone,humerus.SD [mm],femur.SD [mm]\nX-1,16.9,17.5\nX-2,16.9,45\n");
    JsonNode out =
        json("--predict", "body_mass", "--from", "humerus.SD,femur.SD", "--bones", bones);
    JsonNode several = out.get("severalBones");
    assertAll(
        () -> assertEquals(2, several.get("used").size(), several.toString()),
        () -> assertTrue(several.get("gainPercent").isNumber()),
        () -> assertEquals("X-1", out.get("estimates").get(0).get("bone").asText()),
        () -> assertTrue(out.get("estimates").get(0).get("estimate").isNumber()),
        () -> assertTrue(out.get("estimates").get(0).path("notOneAnimal").isMissingNode()),
        () ->
            assertTrue(
                out.get("estimates")
                    .get(1)
                    .get("notOneAnimal")
                    .get(0)
                    .get("sentence")
                    .asText()
                    .contains("hardly be one animal")));
  }

  @ParameterizedTest
  @CsvSource({"naive", "lognormal", "smearing", "ratio"})
  void aChosenCorrectionMovesTheEstimateAndItsFactorIsShown(String correction) throws IOException {
    Path bones = bone("humerus", "SD", "16.9");
    JsonNode out =
        json(
            "--predict",
            "body_mass",
            "--from",
            "humerus.SD",
            "--bones",
            bones,
            "--correction",
            correction);
    JsonNode estimate = out.get("estimates").get(0);
    assertAll(
        () -> assertEquals(correction, estimate.get("correction").asText()),
        () ->
            assertEquals(
                out.get("line").get("corrections").get(correction).doubleValue(),
                estimate.get("correctionFactor").doubleValue()));
  }

  @Test
  void diagnosticsAreToldAsTextAndWrittenAsJson() throws IOException {
    JsonNode checks =
        json("--predict", "body_mass", "--from", "humerus.SD", "--diagnostics")
            .get("line")
            .get("diagnostics");
    Typed text = size("--predict", "body_mass", "--from", "humerus.SD", "--diagnostics");
    assertAll(
        () -> assertTrue(checks.get("normality").get("p").isNumber()),
        () -> assertTrue(checks.get("heldOutCoverage").get("wilson95").get(0).isNumber()),
        () -> assertTrue(checks.get("rows").get(0).get("leverage").isNumber()),
        () -> assertTrue(checks.get("taxaLeftOut").size() > 1),
        () -> assertTrue(text.out().contains("held-out coverage: "), text.out()),
        () -> assertTrue(text.out().contains("Wilson 95 %"), text.out()));
  }

  @Test
  void aLineReadBackwardsGivesFiellersLimits() throws IOException {
    JsonNode estimate =
        json(
                "--predict",
                "body_mass",
                "--from",
                "humerus.SD",
                "--line",
                "inverse",
                "--bones",
                bone("humerus", "SD", "16.9"))
            .get("estimates")
            .get(0);
    assertAll(
        () -> assertTrue(estimate.get("prediction").get(1).isNumber(), estimate.toString()),
        () -> assertTrue(estimate.get("confidence").has("notEstimable")),
        () -> assertTrue(estimate.get("warnings").toString().contains("Fieller")));
  }

  @Test
  void aBoneOfNoDecidedTaxonGetsTheMixtureOfItsCandidates() throws IOException {
    JsonNode estimate =
        json(
                "--predict",
                "body_mass",
                "--from",
                "humerus.SD",
                "--only",
                "humerus.Bd,humerus.BT,humerus.HTC",
                "--undecided",
                "--bones",
                Files.writeString(
                    folder.resolve("bones.csv"),
                    "bone,element,SD [mm],Bd [mm],BT [mm],HTC [mm]\nX-1,humerus,16.9,34.3,32.3,15.8\n"))
            .get("estimates")
            .get(0);
    assertAll(
        () -> assertTrue(estimate.get("estimate").isNumber(), estimate.toString()),
        () -> assertTrue(estimate.get("byTaxon").get(0).get("share").isNumber()));
  }

  @Test
  void aPublishedEquationIsEvaluatedAndAnUnknownOneIsNamedWithTheKnown() throws IOException {
    JsonNode out =
        json("--equation", "sheep-withers-humerus", "--bones", bone("humerus", "GL", "135"));
    Typed unknown = size("--equation", "sheep");
    // Teichert 1975: 4.28 times the length; Vörös 1980 prints 57.8 cm for 135 mm (handbook C).
    assertAll(
        () -> assertEquals(577.8, out.get("estimates").get(0).get("estimate").asDouble(), 0.06),
        () -> assertTrue(out.get("onShelf").has("notEstimable"), "no withers height on the shelf"),
        () -> assertEquals(Terminal.NOT_DONE, unknown.code()),
        () -> assertTrue(unknown.err().contains("sheep-withers-humerus"), unknown.err()));
  }

  private static final String OWN =
      """
      {"equations": [{"key": "own-mass", "name": "invented mass of sheep", "taxon": "Ovis aries",
      "appliesTo": "invented", "predicts": "body_mass", "resultUnit": "kg", "element": "humerus",
      "code": "SD", "predictor": "smallest breadth", "predictorUnit": "mm", "form": "FACTOR",
      "logBase": null, "intercept": 0, "coefficient": 4.0, "validFrom": null, "validTo": null,
      "n": null, "standardError": null, "rSquared": null, "citation": "%s",
      "howVerified": "invented for a test", "verified": false, "caution": "", "worked": [],
      "exponent": null}]}
      """;

  @Test
  void onesOwnEquationIsComparedOnTheShelfAndNeedsACitation() throws IOException {
    Path own = Files.writeString(folder.resolve("own.json"), OWN.formatted("Invented 2026"));
    JsonNode out = json("--equations", own, "--equation", "own-mass");
    Path uncited = Files.writeString(folder.resolve("uncited.json"), OWN.formatted(""));
    Typed refused = size("--equations", uncited, "--equation", "own-mass");
    assertAll(
        () ->
            assertTrue(
                out.get("onShelf")
                    .get("sentence")
                    .asText()
                    .matches("On your \\d+ animal\\(s\\) this equation is off by a median of .*"),
                out.toString()),
        () -> assertEquals(Terminal.NOT_DONE, refused.code()),
        () ->
            assertTrue(
                refused.err().contains("uncited.json, equations row 1, field citation"),
                refused.err()));
  }

  private Path bone(String element, String code, String value) throws IOException {
    return Files.writeString(
        folder.resolve("bones.csv"),
        "bone,element," + code + " [mm]\nX-1," + element + "," + value + "\n");
  }

  private Typed size(Object... words) {
    Object[] all = new Object[words.length + 3];
    all[0] = "size";
    all[1] = "--shelf";
    all[2] = shelf;
    System.arraycopy(words, 0, all, 3, words.length);
    return Typed.command(all);
  }

  private JsonNode json(Object... words) throws IOException {
    Path out = folder.resolve("out.json");
    Object[] all = new Object[words.length + 2];
    System.arraycopy(words, 0, all, 0, words.length);
    all[words.length] = "--json";
    all[words.length + 1] = out;
    Typed typed = size(all);
    assertEquals(0, typed.code(), typed.err());
    return new ObjectMapper().readTree(out.toFile());
  }
}
