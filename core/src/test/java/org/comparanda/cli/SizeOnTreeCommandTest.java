package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code size --line pgls --tree}, from the words typed to the JSON. */
class SizeOnTreeCommandTest {
  @TempDir Path folder;

  // R 4.2.2, ape 5.7, nlme 3.1.162: expected/h_pgls.csv, script h-phylo.R; 1e-8 relative: issue 5.
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "geospiza_culmen_on_wing, geospiza, culmenL, wingL, raw",
    "geospiza_beakdepth_on_tarsus, geospiza, beakD, tarsusL, raw",
    "mammal49_home_range_on_mass, mammal49, home_range_km2, body_mass_kg, log10",
    "carni70_range_on_size, carni70, range_km, size_kg, log10",
  })
  void linesAndContrastsOnTreesEqualTheOutsideOnes(
      String set, String files, String predict, String from, String scale) throws IOException {
    OutsideCheck check =
        OutsideCheck.named(
            "cli-pgls-" + set.replace('_', '-'),
            "R 4.2.2, ape 5.7, nlme 3.1.162; expected/h_pgls.csv, " + set);
    Path table = OutsideFile.copied(folder, files + "_traits.csv");
    Path tree = OutsideFile.copied(folder, files + "_tree.nwk");
    for (OutsideTable.Row row :
        OutsideTable.read("expected/h_pgls.csv")
            .where("set", set)
            .where(r -> r.text("model").startsWith("pgls brownian"))
            .rows()) {
      JsonNode line = line(table, tree, predict, from, scale, row.text("lambda"));
      String at = row.text("model") + " ";
      check.exact(at + "n", row.count("n"), line.get("n").intValue());
      compare(check, at, row, line);
      check.absolute(
          at + "log-likelihood",
          row.number("loglik"),
          line.get("logLikelihood").doubleValue(),
          1e-8);
    }
    OutsideTable.Row contrasts =
        OutsideTable.read("expected/h_pgls.csv")
            .where("set", set)
            .where(r -> r.text("model").startsWith("independent contrasts"))
            .rows()
            .get(0);
    JsonNode ours = line(table, tree, predict, from, scale, "1").get("contrasts");
    check.relative(
        "contrasts slope", contrasts.number("slope"), ours.get("slope").doubleValue(), 1e-8);
    check.relative(
        "contrasts se",
        contrasts.number("se_slope"),
        ours.get("slopeStandardError").doubleValue(),
        1e-8);
    OutsideTable.Row ml =
        OutsideTable.read("expected/h_pgls.csv")
            .where("set", set)
            .where(r -> r.text("model").startsWith("pgls lambda"))
            .rows()
            .get(0);
    compare(
        check,
        "at the outside lambda ",
        ml,
        line(table, tree, predict, from, scale, ml.text("lambda")));
  }

  private static void compare(OutsideCheck check, String at, OutsideTable.Row row, JsonNode line) {
    check.relative(at + "slope", row.number("slope"), line.get("slope").doubleValue(), 1e-8);
    check.relative(
        at + "se", row.number("se_slope"), line.get("slopeStandardError").doubleValue(), 1e-8);
    check.relative(
        at + "intercept", row.number("intercept"), line.get("intercept").doubleValue(), 1e-8);
    check.relative(
        at + "low",
        row.number("slope_lo95"),
        line.get("slopeInterval95").get(0).doubleValue(),
        1e-8);
  }

  private JsonNode line(
      Path table, Path tree, String predict, String from, String scale, String lambda)
      throws IOException {
    Path json = folder.resolve("out.json");
    Typed typed =
        Typed.command(
            "size",
            "--shelf",
            table,
            "--as",
            "taxon=species",
            "--register",
            "--as-is",
            "--predict",
            predict,
            "--from",
            from,
            "--scale",
            scale,
            "--line",
            "pgls",
            "--tree",
            tree,
            "--lambda",
            lambda,
            "--json",
            json);
    assertEquals(0, typed.code(), typed.err());
    return new ObjectMapper().readTree(json.toFile()).get("line");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "under four tips | (fuliginosa:1,fortis:1,other:2); | 4",
        "a negative length | ((fuliginosa:1,fortis:-1):1,(magnirostris:1,conirostris:1):1); | branch length is -1",
        "a missing length | ((fuliginosa:1,fortis):1,(magnirostris:1,conirostris:1):1); | length",
        "all lengths zero | ((fuliginosa:0,fortis:0):0,(magnirostris:0,conirostris:0):0); | zero",
        "a doubled tip | ((fuliginosa:1,fuliginosa:1):1,(magnirostris:1,conirostris:1):1); | fuliginosa",
        "no tree at all | (fuliginosa:1,fortis:1 | tree",
      })
  void aTreeThatCarriesNoLineSaysWhyAndWhatToDo(String what, String newick, String said)
      throws IOException {
    Path tree = Files.writeString(folder.resolve("tree.nwk"), newick);
    Path json = folder.resolve("out.json");
    Typed typed =
        Typed.command(
            "size",
            "--shelf",
            OutsideFile.copied(folder, "geospiza_traits.csv"),
            "--as",
            "taxon=species",
            "--register",
            "--predict",
            "culmenL",
            "--from",
            "wingL",
            "--scale",
            "raw",
            "--line",
            "pgls",
            "--tree",
            tree,
            "--json",
            json);
    JsonNode why = new ObjectMapper().readTree(json.toFile()).get("line").get("notEstimable");
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code(), what),
        () -> assertTrue(typed.err().contains(said), typed.err()),
        () -> assertTrue(why.get("remedy").asText().length() > 10, why.toString()));
  }

  @Test
  void aLambdaBeyondOneIsRefused() {
    Typed typed =
        Typed.command(
            "size",
            "--shelf",
            OutsideFile.copied(folder, "geospiza_traits.csv"),
            "--as",
            "taxon=species",
            "--register",
            "--predict",
            "culmenL",
            "--from",
            "wingL",
            "--line",
            "pgls",
            "--lambda",
            "1.2");
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code()),
        () -> assertTrue(typed.err().contains("--lambda 1.2"), typed.err()));
  }
}
