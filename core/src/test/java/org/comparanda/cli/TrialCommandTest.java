package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
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

/** {@code trial}, from the words typed to the JSON. */
class TrialCommandTest {
  @TempDir Path folder;

  // R 4.2.2, MASS 7.3.58.2: lda(X, class, prior, CV = TRUE), the prior as given when a row is out;
  // expected/c_confusion.csv and c_hits.csv, script c-discriminant.R.
  @ParameterizedTest(name = "{0}, {4} priors")
  @CsvSource({
    "iris, iris.csv, species, 'sepal_length,sepal_width,petal_length,petal_width', equal, equal",
    "penguins, penguins.csv, species, 'bill_length,bill_depth,flipper_length,body_mass', equal,"
        + " equal",
    "penguins, penguins.csv, species, 'bill_length,bill_depth,flipper_length,body_mass',"
        + " proportional, shelf",
    "crabs, crabs.csv, group, 'FL,RW,CL,CW,BD', equal, equal",
  })
  void hitTablesEqualTheOutsideOnes(
      String set, String file, String taxon, String only, String outsidePrior, String priors)
      throws IOException {
    OutsideCheck check =
        OutsideCheck.named(
            "cli-trial-" + set.replace('_', '-') + "-" + priors,
            "R 4.2.2, MASS 7.3.58.2, lda(CV=TRUE), c_confusion.csv, " + set + ", " + outsidePrior);
    List<OutsideTable.Row> cells =
        OutsideTable.read("expected/c_confusion.csv")
            .where("set", set)
            .where("method", "lda")
            .where("prior", outsidePrior)
            .where("mode", "loo")
            .rows();
    assertFalse(cells.isEmpty(), "rows of " + set);
    JsonNode table =
        trial(
                "--shelf",
                OutsideFile.copied(folder, file),
                "--as",
                "animal=id,taxon=" + taxon,
                "--only",
                only,
                "--register",
                "--scale",
                "raw",
                "--method",
                "linear",
                "--priors",
                priors)
            .get("table");
    for (OutsideTable.Row cell : cells) {
      int ours = table.path(cell.text("true")).path(cell.text("assigned")).asInt(0);
      check.exact(
          cell.text("true") + " called " + cell.text("assigned"), cell.count("count"), ours);
    }
  }

  // R 4.2.2, MASS 7.3.58.2, class 7.3.21: lda, qda and the nearest neighbour with both sides of the
  // animal out, and with the one row alone out; specimen = measurement + noise;
  // expected/e_animal_out.csv, script e-animal-out.R.
  @ParameterizedTest(name = "{0}, {6}")
  @CsvSource({
    "crabs, crabs.csv, group, crab_id, crabs_side_noise.csv, 0.01, lda, linear",
    "crabs, crabs.csv, group, crab_id, crabs_side_noise.csv, 0.01, qda, quadratic",
    "crabs, crabs.csv, group, crab_id, crabs_side_noise.csv, 0.01, knn1, nearest-one",
    "wolves_group, wolves.csv, group, wolf_id, wolves_side_noise.csv, 0.1, lda, linear",
    "wolves_group, wolves.csv, group, wolf_id, wolves_side_noise.csv, 0.1, knn1, nearest-one",
  })
  void bonesAreCountedWithTheirWholeAnimalLeftOut(
      String set,
      String file,
      String taxon,
      String id,
      String noise,
      String unit,
      String outsideMethod,
      String method)
      throws IOException {
    OutsideTable.Row expected =
        OutsideTable.read("expected/e_animal_out.csv")
            .where("set", set)
            .where("method", outsideMethod)
            .rows()
            .get(0);
    OutsideCheck check =
        OutsideCheck.named(
            "cli-trial-bones-" + set.replace('_', '-') + "-" + method,
            "R 4.2.2, MASS 7.3.58.2, class 7.3.21, e_animal_out.csv, "
                + set
                + ", "
                + outsideMethod);
    JsonNode trial = ofBones(specimens(file, taxon, id, noise, new BigDecimal(unit), ""), method);
    check.exact("animals", expected.count("animals"), trial.get("animals").asInt());
    check.exact("bones", expected.count("specimens"), trial.get("bones").get("bones").asInt());
    check.exact(
        "hits", expected.count("leave_one_animal_out"), trial.get("bones").get("hits").asInt());
    JsonNode naive =
        ofBones(specimens(file, taxon, id, noise, new BigDecimal(unit), "-side"), method);
    check.exact(
        "hits with every bone taken for an animal",
        expected.count("naive_leave_one_specimen_out"),
        naive.get("bones").get("hits").asInt());
  }

  private JsonNode ofBones(Path table, String method) throws IOException {
    return trial(
        "--shelf", table, "--register", "--scale", "raw", "--method", method, "--rows", "bones");
  }

  /**
   * The two sides of every animal, written as decimals so that no rounding comes in.
   *
   * @param ownName put behind the animal's number with the side, if each bone is to pass for an
   *     animal of its own; blank if not
   */
  private Path specimens(
      String file, String taxon, String id, String noise, BigDecimal unit, String ownName)
      throws IOException {
    Map<String, OutsideTable.Row> animals = new HashMap<>();
    OutsideTable.read("data/" + file).rows().forEach(r -> animals.put(r.text("id"), r));
    List<OutsideTable.Row> sides = OutsideTable.read("data/" + noise).rows();
    List<String> noises =
        sides.get(0).cells().getHeader().stream().filter(h -> h.startsWith("d")).toList();
    List<String> lines = new ArrayList<>();
    lines.add("animal,taxon,side," + String.join(",", noises));
    for (OutsideTable.Row side : sides) {
      OutsideTable.Row animal = animals.get(side.text(id));
      StringBuilder line =
          new StringBuilder(side.text(id))
              .append(ownName.isBlank() ? "" : ownName + side.text("side"))
              .append(',')
              .append(animal.text(taxon));
      line.append(side.text("side").equals("L") ? ",left" : ",right");
      for (String code : noises) {
        BigDecimal value =
            new BigDecimal(animal.text(code.replaceFirst("d_?", "")))
                .add(new BigDecimal(side.text(code)).multiply(unit));
        line.append(',').append(value.toPlainString());
      }
      lines.add(line.toString());
    }
    return Files.write(folder.resolve("specimens.csv"), lines);
  }

  private JsonNode trial(Object... words) throws IOException {
    Path json = folder.resolve("trial.json");
    List<Object> line = new ArrayList<>(List.of("trial"));
    line.addAll(List.of(words));
    line.addAll(List.of("--json", json));
    Typed typed = Typed.command(line.toArray());
    assertEquals(0, typed.code(), typed.err());
    return new ObjectMapper().readTree(json.toFile());
  }

  // The demo shelf (simulated) has five elements in one table.
  @Test
  void oneElementOfATableOfSeveralIsPicked() {
    Typed typed =
        Typed.command(
            "trial", "--shelf", Path.of("..", "demo-data", "shelf.csv"), "--element", "humerus");
    assertEquals(0, typed.code(), typed.err());
    assertTrue(typed.err().contains("Not read: Bp [mm]"), typed.err());
    assertTrue(typed.out().contains("Bos taurus"), typed.out());
  }

  @Test
  void theTextShowsBothRatesOfEachTaxon() {
    Typed typed =
        Typed.command(
            "trial",
            "--shelf",
            OutsideFile.copied(folder, "iris.csv"),
            "--as",
            "animal=id,taxon=species",
            "--register",
            "--scale",
            "raw",
            "--method",
            "linear");
    assertAll(
        () -> assertEquals(0, typed.code(), typed.err()),
        // 147 of 150: lda(CV = TRUE), c_hits.csv
        () -> assertTrue(typed.out().lines().findFirst().orElse("").contains("147 of 150")),
        () -> assertTrue(typed.out().contains("of true ones, called so"), typed.out()),
        () -> assertTrue(typed.out().contains("of those called so, true"), typed.out()));
  }

  @Test
  void secondOpinionsStandSideBySideAndDecideNothing() throws IOException {
    String shelf = OutsideFile.copied(folder, "midge.csv").toString();
    String[] midges = {
      "trial",
      "--shelf",
      shelf,
      "--as",
      "animal=id,taxon=species",
      "--register",
      "--second-opinions"
    };
    Typed typed = Typed.command((Object[]) midges);
    JsonNode json = trial(List.of(midges).subList(1, midges.length).toArray());
    assertAll(
        () -> assertEquals(0, typed.code(), typed.err()),
        () -> assertTrue(typed.out().contains("auto takes predictive, by rule: "), typed.out()),
        () -> assertTrue(typed.out().contains("shrunk-per-taxon"), typed.out()),
        () -> assertEquals(9, json.get("methods").size()),
        () -> assertEquals(15, json.get("methods").get(0).get("animals").asInt()),
        () -> assertEquals(10, json.get("folds").asInt()));
  }

  @Test
  void aShelfOfSeveralElementsAsksWhichOne() throws IOException {
    Path shelf =
        Files.writeString(
            folder.resolve("two.csv"),
            "animal,taxon,element,GL\n1,Ovis aries,humerus,150\n2,Ovis aries,femur,170\n");
    Typed typed = Typed.command("trial", "--shelf", shelf);
    assertAll(
        () -> assertEquals(2, typed.code()),
        () -> assertTrue(typed.err().contains("--element: femur, humerus"), typed.err()));
  }
}
