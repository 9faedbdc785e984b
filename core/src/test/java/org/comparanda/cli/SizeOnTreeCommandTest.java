package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

  // Each bone is its own animal's, so its tip is told from the others. Python, numpy, inverse
  // matrices: expected/h_tip.csv, script h-tip.py. 1e-8 relative: issue 5.
  @ParameterizedTest(name = "lambda {0}")
  @CsvSource({"1", "0.5"})
  void aBoneIsReadAtItsOwnTipAsTheMatricesSay(double lambda) throws IOException {
    OutsideCheck check =
        OutsideCheck.named(
            "cli-pgls-tip-" + lambda, "Python 3.11, numpy 2.4.6; expected/h_tip.csv");
    List<OutsideTable.Row> rows =
        OutsideTable.read("expected/h_tip.csv").where(r -> r.number("lambda") == lambda).rows();
    StringBuilder bones = new StringBuilder("bone,animal,taxon,wingL\n");
    rows.forEach(r -> bones.append("b,%1$s,%1$s,%2$s\n".formatted(r.text("tip"), r.text("x0"))));
    JsonNode estimates = estimates(lambda, bones.toString());
    assertEquals(3, estimates.size());
    for (int i = 0; i < rows.size(); i++) {
      OutsideTable.Row row = rows.get(i);
      JsonNode ours = estimates.get(i);
      String at = row.text("tip") + " ";
      assertSaid(ours, "Read at the tip of " + at.strip() + ", from where the other taxa put it.");
      check.relative(at + "fit", row.number("fit"), ours.get("estimate").doubleValue(), 1e-8);
      check.relative(
          at + "low", row.number("lo95"), ours.get("prediction").get(0).doubleValue(), 1e-8);
      check.relative(
          at + "high", row.number("hi95"), ours.get("prediction").get(1).doubleValue(), 1e-8);
    }
  }

  @Test
  void aBoneOfNoTaxonOnTheTreeIsReadFromTheRootAndSaysSo() throws IOException {
    JsonNode estimates = estimates(1, "bone,taxon,wingL\nA,fortis,4.2\nB,,4.2\nC,Gallus,4.2\n");
    assertSaid(estimates.get(0), "Read at the tip of fortis");
    assertSaid(estimates.get(1), "No taxon is given: read from the root line");
    assertSaid(estimates.get(2), "\"Gallus\" has no place on the tree of this line: read from");
    assertEquals(estimates.get(1).get("prediction"), estimates.get(2).get("prediction"));
    assertTrue(
        estimates.get(0).get("prediction").get(1).asDouble()
            < estimates.get(1).get("prediction").get(1).asDouble());
  }

  private JsonNode estimates(double lambda, String bones) throws IOException {
    Path table = Files.writeString(folder.resolve("bones.csv"), bones);
    Path json = folder.resolve("out.json");
    Typed typed = geospiza("--line", "pgls", "--lambda", lambda, "--bones", table, "--json", json);
    assertEquals(0, typed.code(), typed.err());
    return new ObjectMapper().readTree(json.toFile()).get("estimates");
  }

  private static void assertSaid(JsonNode estimate, String words) {
    assertTrue(
        estimate.get("warnings").toString().replace("\\", "").contains(words), estimate.toString());
  }

  @Test
  void aLambdaBeyondOneIsRefused() {
    Typed typed = geospiza("--line", "pgls", "--lambda", "1.2");
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code()),
        () -> assertTrue(typed.err().contains("--lambda 1.2"), typed.err()));
  }

  private Typed geospiza(Object... more) {
    List<Object> words =
        new ArrayList<>(
            List.of("size", "--shelf", OutsideFile.copied(folder, "geospiza_traits.csv")));
    words.addAll(
        List.of("--as", "animal=species,taxon=species", "--register", "--as-is", "--scale", "raw"));
    words.addAll(List.of("--predict", "culmenL", "--from", "wingL"));
    words.addAll(List.of("--tree", OutsideFile.copied(folder, "geospiza_tree.nwk")));
    words.addAll(List.of(more));
    return Typed.command(words.toArray());
  }
}
