package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code suggest}, from the words typed to the JSON. */
class SuggestCommandTest {
  private static final String MAPPING = "taxon=species,animal=id,bone=id";

  @TempDir Path folder;

  // R 4.2.2, MASS 7.3.58.2: predict(lda(X, species, prior, tol = 1e-8), newdata);
  // expected/c_microtus_unidentified.csv, script c-discriminant.R. 1e-6: issue 3.
  @ParameterizedTest(name = "{0} priors")
  @CsvSource({"equal, equal", "proportional, shelf"})
  void unidentifiedVolesGetTheOutsideClassAndPosterior(String outsidePrior, String priors)
      throws IOException {
    OutsideCheck check =
        OutsideCheck.named(
            "cli-suggest-voles-" + priors,
            "R 4.2.2, MASS 7.3.58.2, predict(lda), c_microtus_unidentified.csv, " + outsidePrior);
    List<OutsideTable.Row> rows =
        OutsideTable.read("expected/c_microtus_unidentified.csv")
            .where("prior", outsidePrior)
            .rows();
    JsonNode bones = suggest(priors).get("bones");
    assertEquals(199, rows.size());
    assertEquals(rows.size(), bones.size());
    for (int i = 0; i < rows.size(); i++) {
      OutsideTable.Row row = rows.get(i);
      JsonNode ours = bones.get(i);
      assertEquals(row.text("id"), ours.get("bone").asText());
      check.exact(
          row.text("id") + " class",
          row.text("lda_class"),
          ours.get("taxa").get(0).get("taxon").asText());
      Map<String, Double> shares = new HashMap<>();
      ours.get("taxa")
          .forEach(t -> shares.put(t.get("taxon").asText(), t.get("share").doubleValue()));
      for (String taxon : List.of("multiplex", "subterraneus")) {
        check.absolute(
            row.text("id") + " posterior " + taxon,
            row.number("lda_posterior_" + taxon),
            shares.get(taxon),
            1e-6);
      }
    }
  }

  private JsonNode suggest(String priors) throws IOException {
    Path json = folder.resolve("voles.json");
    Typed typed =
        Typed.command(
            "suggest",
            OutsideFile.copied(folder, "microtus_unidentified.csv"),
            "--shelf",
            OutsideFile.copied(folder, "microtus_reference.csv"),
            "--as",
            MAPPING,
            "--register",
            "--scale",
            "raw",
            "--method",
            "linear",
            "--priors",
            priors,
            "--json",
            json);
    assertEquals(0, typed.code(), typed.err());
    return new ObjectMapper().readTree(json.toFile());
  }

  @Test
  void theTextShowsTheAnswerFirstAndNeverAShareWithoutTypicality() {
    Typed typed =
        Typed.command(
            "suggest",
            OutsideFile.copied(folder, "microtus_unidentified.csv"),
            "--shelf",
            OutsideFile.copied(folder, "microtus_reference.csv"),
            "--as",
            MAPPING,
            "--register");
    List<String> lines = typed.out().lines().limit(4).toList();
    assertAll(
        () -> assertEquals(0, typed.code(), typed.err()),
        () -> assertEquals("Bone m090, unnamed", lines.get(0)),
        () -> assertTrue(lines.get(1).length() > 20, "a sentence: " + lines.get(1)),
        () ->
            assertTrue(
                typed
                    .out()
                    .lines()
                    .filter(l -> l.strip().startsWith("share"))
                    .allMatch(l -> l.contains("typicality")),
                typed.out()));
  }

  @Test
  void priorsFromATableAreNamedByIt() throws IOException {
    Path priors =
        Files.writeString(
            folder.resolve("valley.csv"), "taxon,prior\nmultiplex,3\nsubterraneus,1\n");
    JsonNode json = suggest(priors.toString());
    assertEquals("valley.csv", json.get("shelf").get("priors").asText());
  }

  @Test
  void priorsFromATableShowTheirSourceInEveryAnswer() throws IOException {
    Path priors =
        Files.writeString(
            folder.resolve("valley.csv"),
            "taxon,prior,source\nmultiplex,3,owl pellets 1998\nsubterraneus,1,owl pellets 1998\n");
    assertEquals(
        "valley.csv (owl pellets 1998)",
        suggest(priors.toString()).get("bones").get(0).get("basis").get("priors").asText());
  }

  @Test
  void nothingThatIsNoNumberStandsInTheJson() throws IOException {
    List<String> strange = new ArrayList<>();
    collect(suggest("equal"), strange);
    assertEquals(List.of(), strange);
  }

  private static void collect(JsonNode node, List<String> strange) {
    node.forEach(child -> collect(child, strange));
    if (node.isTextual() && node.asText().matches("-?(NaN|Infinity|INF)")) {
      strange.add(node.asText());
    }
  }

  @Test
  void aMappingThatNoTableHasIsNamed() {
    Typed typed =
        Typed.command(
            "suggest",
            OutsideFile.copied(folder, "microtus_unidentified.csv"),
            "--shelf",
            OutsideFile.copied(folder, "microtus_reference.csv"),
            "--as",
            MAPPING + ",side=flank",
            "--register");
    assertAll(
        () -> assertEquals(2, typed.code()),
        () -> assertTrue(typed.err().contains("\"flank\""), typed.err()));
  }

  @Test
  void aTaxonSetAsideIsInNoAnswerAndEveryAnswerSaysWhy() throws IOException {
    Path bones =
        Files.writeString(
            folder.resolve("one.csv"), "bone,antenna_length,wing_length\n1,1.4,1.8\n");
    Path list =
        Files.writeString(folder.resolve("aside.csv"), "taxon,reason\nApf,flies in June only\n");
    Path midges = OutsideFile.copied(folder, "midge.csv");
    for (String words : List.of("Apf=flies in June only", list.toString())) {
      Typed typed =
          Typed.command(
              "suggest",
              bones,
              "--shelf",
              midges,
              "--as",
              "animal=id,taxon=species,bone=bone",
              "--register",
              "--set-aside",
              words);
      assertEquals(0, typed.code(), typed.err());
      assertTrue(typed.out().contains("Set aside: Apf (flies in June only)."), typed.out());
      assertTrue(typed.out().lines().noneMatch(l -> l.endsWith(" Apf")), typed.out());
    }
    Typed unsaid = Typed.command("suggest", bones, "--shelf", bones, "--set-aside", "Apf=");
    assertEquals(2, unsaid.code());
    assertTrue(unsaid.err().contains("names no taxon or no reason"), unsaid.err());
  }

  @Test
  void rulesFromATableHoldForTheRunAndStandInTheResult() throws IOException {
    Path rules =
        Files.writeString(
            folder.resolve("rules.csv"), "rule,value\none-share,0.6\nset-aside,Apf=in June\n");
    Path json = folder.resolve("ruled.json");
    Typed typed = midge(rules, json);
    assertEquals(0, typed.code(), typed.err());
    JsonNode said = new ObjectMapper().readTree(json.toFile());
    assertEquals(0.6, said.get("rules").get("thresholds").get("oneShare").asDouble());
    JsonNode basis = said.get("bones").get(0).get("basis");
    assertEquals(0.6, basis.get("thresholds").get("oneShare").asDouble());
    assertEquals("Apf", basis.get("setAside").get(0).get("taxon").asText());
  }

  @Test
  void aRuleOutsideWhatIsAllowedIsRefusedWithTheRange() throws IOException {
    Path rules =
        Files.writeString(folder.resolve("rules.csv"), "rule,value\none-share,2\nno-such-rule,1\n");
    Typed typed = midge(rules, folder.resolve("ruled.json"));
    assertEquals(2, typed.code());
    assertTrue(typed.err().contains("a number from 0.5 to 0.9999"), typed.err());
    assertTrue(typed.err().contains("no-such-rule"), typed.err());
    assertFalse(Files.exists(folder.resolve("ruled.json")));
  }

  private Typed midge(Path rules, Path json) throws IOException {
    Path bones =
        Files.writeString(
            folder.resolve("one.csv"), "bone,antenna_length,wing_length\n1,1.4,1.8\n");
    return Typed.command(
        "suggest",
        bones,
        "--shelf",
        OutsideFile.copied(folder, "midge.csv"),
        "--as",
        "animal=id,taxon=species,bone=bone",
        "--register",
        "--rules",
        rules,
        "--json",
        json);
  }
}
