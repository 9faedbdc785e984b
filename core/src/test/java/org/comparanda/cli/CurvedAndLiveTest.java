package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.How;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.storage.Collection;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented turtles and crocodiles with straight and curved, dry and live measures. */
class CurvedAndLiveTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();

  @TempDir Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void aRoomOfThem() throws IOException {
    StringBuilder table = new StringBuilder("animal,taxon,element,SCL,SCW,CCL,DCL,DCT,HL,HLT\n");
    for (int i = 0; i < 6; i++) {
      table.append(
          "E-%d,Emys orbicularis,carapace,%d,%d,%d,,,,\n".formatted(i, 140 + i, 110 + i, 170 + i));
      table.append(
          "T-%d,Testudo graeca,carapace,%d,%d,%d,,,,\n"
              .formatted(i, 180 + 2 * i, 140 + i, 240 + i));
      table.append(
          "C-%d,Crocodylus palustris,skull,,,,%d,%d,,\n".formatted(i, 400 + 9 * i, 430 + 9 * i));
      table.append(
          "C-%d,Crocodylus palustris,live-head,,,,,,%d,%d\n"
              .formatted(i, 415 + 9 * i, 450 + 9 * i));
      table.append(
          "O-%d,Osteolaemus tetraspis,skull,,,,%d,%d,,\n".formatted(i, 200 + 3 * i, 220 + 3 * i));
    }
    Path rows = Files.writeString(folder.resolve("rows.csv"), table);
    file = folder.resolve("room.comparanda");
    Typed added = Typed.command("shelf", "add", rows, "--collection", file);
    assertEquals(0, added.code(), added.err());
  }

  @Test
  void bothStandOnTheAnimalsCardAndTheTapeIsSaid() {
    String turtle = Typed.command("shelf", "show", "E-1", "--collection", file).out();
    String crocodile = Typed.command("shelf", "show", "C-2", "--collection", file).out();
    assertAll(
        () -> assertTrue(turtle.contains(" CCL=171.0 (tape) SCL=141.0 SCW=111.0"), turtle),
        () -> assertTrue(crocodile.contains("skull axial DCL=418.0 DCT=448.0 (tape)"), crocodile),
        () ->
            assertTrue(crocodile.contains("live-head axial HL=433.0 HLT=468.0 (tape)"), crocodile));
  }

  @Test
  void aValueCanBeAddedByHand() {
    Typed edited =
        Typed.command(
            "shelf",
            "edit",
            "O-3",
            "--bone",
            "live-head",
            "--value",
            "HL=215",
            "--value",
            "HLT=230",
            "--by",
            "keeper",
            "--why",
            "measured on the carcass",
            "--collection",
            file);
    assertEquals(0, edited.code(), edited.err());
    String shown = Typed.command("shelf", "show", "O-3", "--collection", file).out();
    assertTrue(shown.contains("live-head axial HL=215.0 HLT=230.0 (tape)"), shown);
  }

  @Test
  void noFitPutsTheCurveBesideTheStraightLine() {
    Suggestion both = suggestion("carapace", Map.of("SCL", 142.0, "SCW", 112.0, "CCL", 172.0));
    Suggestion straight = suggestion("carapace", Map.of("SCL", 142.0, "SCW", 112.0));
    assertAll(
        () -> assertEquals(codes("SCL", "SCW"), both.measurements()),
        () -> assertEquals(straight.taxa(), both.taxa()),
        () ->
            assertTrue(
                both.warnings().stream()
                    .anyMatch(
                        w ->
                            w.startsWith(
                                "CCL was not compared: it is"
                                    + " taken along the curve with a tape")),
                both.warnings().toString()));
  }

  @Test
  void aCurveIsNeverComparedWithStraightLines() {
    assertEquals(List.of(), suggestion("carapace", Map.of("CCL", 142.0)).measurements());
  }

  @Test
  void aDrySkullIsNeverComparedWithLiveHeads() {
    Suggestion skull = suggestion("skull", Map.of("DCL", 418.0));
    Suggestion head = suggestion("live-head", Map.of("HL", 418.0));
    assertAll(
        () -> assertEquals(codes("DCL"), skull.measurements()),
        () -> assertEquals(codes("HL"), head.measurements()),
        () -> assertFalse(head.taxa().toString().contains("Osteolaemus")));
  }

  @Test
  void aSizeLineHasOnlyTheAnimalsWithItsOwnMeasure() {
    Typed line =
        Typed.command(
            "size", "--predict", "live-head.HL", "--from", "skull.DCL", "--collection", file);
    assertTrue(line.out().contains("n = 6, 1 taxon"), line.out() + line.err());
  }

  @Test
  void noCodeIsTakenInTwoWaysOrOnTwoStates() {
    Set<MeasurementCode> tape = new HashSet<>();
    Set<MeasurementCode> caliper = new HashSet<>();
    for (Measurement m : TABLES.protocol().measurements()) {
      (m.how() == How.TAPE ? tape : caliper).add(m.code());
    }
    tape.retainAll(caliper);
    assertEquals(Set.of(), tape);
    Set<MeasurementCode> head = new HashSet<>();
    TABLES.protocol().of(new ElementKey("live-head")).forEach(m -> head.add(m.code()));
    TABLES.protocol().measurements().stream()
        .filter(m -> !m.element().equals(new ElementKey("live-head")))
        .forEach(m -> assertFalse(head.contains(m.code()), m.code().value()));
  }

  private static List<MeasurementCode> codes(String... codes) {
    return java.util.Arrays.stream(codes).map(MeasurementCode::new).toList();
  }

  private Suggestion suggestion(String element, Map<String, Double> values) {
    Map<MeasurementCode, Double> read = new java.util.HashMap<>();
    values.forEach((code, value) -> read.put(new MeasurementCode(code), value));
    try (Collection room = Collection.open(file, Typed.CLOCK)) {
      Shelf shelf = room.animals().shelf();
      return Comparison.of(shelf, TABLES.protocol(), TABLES.taxa(), ComparisonRules.withDefaults())
          .suggest(
              new BoneInHand(
                  "X-1",
                  Optional.empty(),
                  new ElementKey(element),
                  Side.AXIAL,
                  Portion.WHOLE,
                  BoneState.notRecorded(),
                  read,
                  Optional.empty()));
    }
  }
}
