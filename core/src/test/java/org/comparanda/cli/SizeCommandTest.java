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
import java.util.List;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code size}, from the words typed to the JSON. */
class SizeCommandTest {
  @TempDir Path folder;

  // R 4.2.2: predict(lm(y ~ x), newdata, interval = "prediction", level = 0.95);
  // expected/a_ols_intervals.csv and a_ols_fit.csv, script a-ols.R. 1e-8 relative: issue 3.
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "tortues_len_wid, tortues.csv, animal=id, length_mm, width_mm",
    "penguins, penguins.csv, 'animal=id,taxon=species', body_mass, flipper_length",
  })
  void predictionIntervalsEqualTheOutsideOnes(
      String set, String file, String as, String predict, String from) throws IOException {
    OutsideCheck check =
        OutsideCheck.named(
            "cli-size-" + set.replace('_', '-'),
            "R 4.2.2, predict.lm(interval='prediction'), a_ols_intervals.csv, " + set);
    List<OutsideTable.Row> rows =
        OutsideTable.read("expected/a_ols_intervals.csv")
            .where("set", set)
            .where("scale", "log10")
            .where(r -> r.number("level") == 0.95)
            .rows();
    assertFalse(rows.isEmpty(), "rows of " + set);
    StringBuilder bones = new StringBuilder("bone," + from + "\n");
    rows.forEach(r -> bones.append("b,").append(r.text("x0")).append('\n'));
    Path table = Files.writeString(folder.resolve("bones.csv"), bones);
    Path json = folder.resolve("size.json");

    Typed typed =
        Typed.command(
            "size",
            "--shelf",
            OutsideFile.copied(folder, file),
            "--as",
            as,
            "--register",
            "--as-is",
            "--predict",
            predict,
            "--from",
            from,
            "--bones",
            table,
            "--json",
            json);

    assertEquals(0, typed.code(), typed.err());
    JsonNode estimates = new ObjectMapper().readTree(json.toFile()).get("estimates");
    assertEquals(rows.size(), estimates.size());
    for (int i = 0; i < rows.size(); i++) {
      OutsideTable.Row row = rows.get(i);
      JsonNode ours = estimates.get(i);
      String at = set + " at " + row.text("x0");
      check.relative(
          at + " estimate", row.number("bt_fit"), ours.get("estimate").doubleValue(), 1e-8);
      limits(check, at + " prediction", row, "bt_pi", ours.get("prediction"));
      limits(check, at + " confidence", row, "bt_ci", ours.get("confidence"));
      assertEquals(
          row.text("outside_range").equals("TRUE"), !ours.get("outsideRange").isNull(), at);
    }
  }

  private static void limits(
      OutsideCheck check, String what, OutsideTable.Row row, String columns, JsonNode ours) {
    check.relative(what + " low", row.number(columns + "_lo"), ours.get(0).doubleValue(), 1e-8);
    check.relative(what + " high", row.number(columns + "_hi"), ours.get(1).doubleValue(), 1e-8);
  }

  @Test
  void aBoneWithoutTheMeasurementIsAProblemFoundAndTheOthersAreEstimated() throws IOException {
    Path bones = Files.writeString(folder.resolve("bones.csv"), "bone,length_mm\nA,\nB,120\n");
    Typed typed =
        Typed.command(
            "size",
            "--shelf",
            OutsideFile.copied(folder, "tortues.csv"),
            "--as",
            "animal=id",
            "--register",
            "--predict",
            "width_mm",
            "--from",
            "length_mm",
            "--bones",
            bones);
    assertAll(
        () -> assertEquals(Terminal.PROBLEMS_FOUND, typed.code(), typed.err()),
        () -> assertTrue(typed.out().contains("A: not estimable."), typed.out()),
        () -> assertTrue(typed.out().contains("B: "), typed.out()));
  }

  @Test
  void aLineThatIsNotThereIsNotDoneAndTheJsonSaysWhy() throws IOException {
    Path shelf = Files.writeString(folder.resolve("two.csv"), "animal,wing,bill\n1,10,3\n2,12,4\n");
    Path json = folder.resolve("size.json");
    Typed typed =
        Typed.command(
            "size",
            "--shelf",
            shelf,
            "--register",
            "--predict",
            "wing",
            "--from",
            "bill",
            "--json",
            json);
    JsonNode line = new ObjectMapper().readTree(json.toFile()).get("line");
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code()),
        () -> assertFalse(line.get("notEstimable").get("reason").asText().isBlank()),
        () -> assertFalse(line.get("notEstimable").get("remedy").asText().isBlank()));
  }

  @Test
  void aGroupStandsForItsTaxaOnTheShelf() throws IOException {
    Path shelf =
        Files.writeString(
            folder.resolve("invented.csv"),
            """
            animal,taxon,element,bill,wing
            1,Ovis aries,humerus,10,31
            2,Ovis aries,humerus,12,35
            3,Capra hircus,humerus,14,44
            4,Bos taurus,humerus,17,50
            5,Vulpes vulpes,humerus,20,80
            """);
    Typed typed =
        Typed.command(
            "size",
            "--shelf",
            shelf,
            "--register",
            "--predict",
            "wing",
            "--from",
            "bill",
            "--taxa",
            "Bovidae");
    assertEquals(0, typed.code(), typed.err());
    assertTrue(typed.out().contains("n = 4, 3 taxa"), typed.out());
  }

  @Test
  void aColumnThatIsNotThereIsNamedWithTheNearest() {
    Typed typed =
        Typed.command(
            "size",
            "--shelf",
            OutsideFile.copied(folder, "tortues.csv"),
            "--as",
            "animal=id",
            "--register",
            "--predict",
            "width",
            "--from",
            "length_mm");
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code()),
        () -> assertTrue(typed.err().contains("The nearest is width_mm."), typed.err()));
  }
}
