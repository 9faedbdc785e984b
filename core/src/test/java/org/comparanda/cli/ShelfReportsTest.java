package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.demo.DemoFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code shelf check}, {@code stock} and {@code wanted}, from the words typed to the JSON. */
class ShelfReportsTest {
  private static final String FAULTY =
      """
      animal,taxon,element,side,age_class,remarks,GL [mm],GLC [mm],Bd [mm]
      HB-1,Ovis aries,humerus,left,adult,,150.0,138.0,32.0
      HB-1,Ovis aries,humerus,right,adult,,162.0,138.0,32.0
      HB-2,Ovis aries,humerus,left,juvenile,plaster cast,150.0,151.0,32.0
      HB-3,Ovis aries,humerus,left,adult,,150.0,138.0,32.0
      HB-3,Capra hircus,humerus,left,adult,,150.0,138.0,32.0
      """;

  @TempDir Path folder;

  @Test
  void aTableThatAddRefusesIsListed() throws IOException {
    Path table = Files.writeString(folder.resolve("shelf.csv"), FAULTY);
    Path out = folder.resolve("out.json");
    Typed typed = Typed.command("shelf", "check", "--shelf", table, "--json", out);
    assertEquals(1, typed.code(), typed.err());
    JsonNode list = new ObjectMapper().readTree(out.toFile());
    assertTrue(list.isArray());
    assertEquals("SIDES_DIFFER HB-1 humerus left GL 150 false", line(list, "SIDES_DIFFER"));
    assertEquals("PART_LONGER HB-2 humerus left GLC 151 false", line(list, "PART_LONGER"));
    assertEquals("NUMBER_TWICE HB-3 humerus left animal HB-3 false", line(list, "NUMBER_TWICE"));
    assertEquals("TWO_TAXA HB-3 humerus left taxon Ovis aries false", line(list, "TWO_TAXA"));
    assertEquals(
        "YOUNG_IN_FIT HB-2 humerus left age_class juvenile false", line(list, "YOUNG_IN_FIT"));
    assertEquals(
        "CAST_IN_FIT HB-2 humerus left remarks plaster cast false", line(list, "CAST_IN_FIT"));
    assertEquals("FEW_ANIMALS null null taxon Capra hircus false", line(list, "FEW_ANIMALS"));
  }

  @Test
  void aLetterInANumberIsListedAmongTheRest() throws IOException {
    Path table = Files.writeString(folder.resolve("shelf.csv"), FAULTY.replace("162.0", "16o.2"));
    Path out = folder.resolve("out.json");
    Typed typed = Typed.command("shelf", "check", "--shelf", table, "--json", out);
    assertEquals(1, typed.code(), typed.err());
    JsonNode list = new ObjectMapper().readTree(out.toFile());
    assertEquals("UNREADABLE HB-1 humerus right GL [mm] 16o.2 false", line(list, "UNREADABLE"));
    assertEquals("TWO_TAXA HB-3 humerus left taxon Ovis aries false", line(list, "TWO_TAXA"));
  }

  @Test
  void anAcceptedFindingIsRememberedWithItsReason() throws IOException {
    Path table =
        Files.writeString(
            folder.resolve("shelf.csv"),
            """
            animal,taxon,element,side,GL [mm]
            HB-1,Ovis aries,humerus,left,150
            HB-1,Ovis aries,humerus,right,162
            """);
    Path collection = folder.resolve("room.comparanda");
    assertEquals(0, Typed.command("shelf", "add", table, "--collection", collection).code());
    Typed refused = Typed.command("shelf", "check", "--collection", collection, "--accept", 1);
    assertEquals(2, refused.code());
    Typed accepted =
        Typed.command(
            "shelf",
            "check",
            "--collection",
            collection,
            "--accept",
            1,
            "--reason",
            "healed break");
    assertTrue(accepted.out().contains("1. SIDES_DIFFER, HB-1, humerus left:"), accepted.out());
    Path out = folder.resolve("out.json");
    Typed.command("shelf", "check", "--collection", collection, "--json", out);
    JsonNode first = new ObjectMapper().readTree(out.toFile()).get(0);
    assertTrue(first.get("accepted").asBoolean());
    assertEquals("healed break", first.get("reason").asText());
  }

  @Test
  void aFindingIsPutRightAsProposedWithNameAndReason() throws IOException {
    Path table =
        Files.writeString(
            folder.resolve("shelf.csv"),
            """
            animal,taxon,element,side,age_class,GL [mm]
            HB-1,Ovis aries,humerus,left,adult,150
            HB-2,Ovis aries,humerus,left,juvenile,151
            """);
    Path collection = folder.resolve("room.comparanda");
    assertEquals(0, Typed.command("shelf", "add", table, "--collection", collection).code());
    Typed list = Typed.command("shelf", "check", "--collection", collection);
    assertTrue(
        list.out()
            .startsWith(
                "1. YOUNG_IN_FIT, HB-2, humerus left: HB-2 is recorded as juvenile, but its bones"
                    + " feed fits of adults. Flag its bones as juvenile, or correct the age class."
                    + " [--correct]"),
        list.out());
    Typed nameless = answered(collection, "--correct", 1, "--reason", "milk teeth");
    assertEquals(2, nameless.code());
    Typed done = answered(collection, "--correct", 1, "--reason", "milk teeth", "--by", "mb");
    assertEquals(1, done.code(), done.err());
    assertTrue(done.err().contains("Corrected: HB-2, flags: \"\" -> \"juvenile\""), done.err());
    assertTrue(!done.out().contains("YOUNG_IN_FIT"), done.out());
    Typed few = answered(collection, "--correct", 1, "--reason", "bought", "--by", "mb");
    assertEquals(2, few.code());
    assertTrue(
        few.err().contains("proposes nothing that could be done without looking"), few.err());
  }

  @Test
  void reportsOnACollectionKeepToTheElementNamed() throws IOException {
    Path table =
        Files.writeString(
            folder.resolve("shelf.csv"),
            """
            animal,taxon,element,side,GL [mm]
            HB-1,Ovis aries,humerus,left,150
            HB-1,Ovis aries,humerus,right,162
            HB-2,Ovis aries,femur,left,180
            """);
    Path collection = folder.resolve("room.comparanda");
    assertEquals(0, Typed.command("shelf", "add", table, "--collection", collection).code());
    Typed stock = Typed.command("shelf", "stock", "--element", "femur", "--collection", collection);
    assertEquals("            femur\nOvis aries      1\n", stock.out(), stock.err());
    Typed check = Typed.command("shelf", "check", "--element", "femur", "--collection", collection);
    assertTrue(!check.out().contains("SIDES_DIFFER"), check.out());
    for (String report : List.of("stock", "wanted", "check")) {
      Typed refused =
          Typed.command("shelf", report, "--element", "femor", "--collection", collection);
      assertEquals(2, refused.code());
      assertTrue(
          refused.err().startsWith("No element \"femor\" is known. Nothing was done."),
          refused.err());
    }
  }

  @Test
  void aFileThatCanNotBeWrittenIsNamedAsItWasTyped() throws IOException {
    Path nowhere = folder.resolve("nowhere").resolve("out.json");
    Typed typed = Typed.command("shelf", "stock", "--shelf", demo(), "--json", nowhere);
    assertEquals(2, typed.code());
    assertTrue(
        typed.err().contains("\"" + nowhere + "\" was not written: there is no folder"),
        typed.err());
  }

  @Test
  void aTableKeepsNoAnswers() throws IOException {
    Path table = Files.writeString(folder.resolve("shelf.csv"), FAULTY);
    Typed typed =
        Typed.command("shelf", "check", "--shelf", table, "--accept", 1, "--reason", "seen");
    assertEquals(2, typed.code());
    assertTrue(typed.err().contains("A table keeps no answers."), typed.err());
  }

  private static Typed answered(Path collection, Object... more) {
    List<Object> words = new ArrayList<>(List.of("shelf", "check", "--collection", collection));
    words.addAll(List.of(more));
    return Typed.command(words.toArray());
  }

  @Test
  void stockCountsAnimalsNotBones() throws IOException {
    Path out = folder.resolve("out.json");
    Typed typed = Typed.command("shelf", "stock", "--shelf", demo(), "--json", out);
    assertEquals(0, typed.code(), typed.err());
    int sheep = 0;
    for (JsonNode cell : new ObjectMapper().readTree(out.toFile())) {
      if (cell.get("taxon").asText().equals("Ovis aries")
          && cell.get("element").asText().equals("humerus")) {
        sheep = cell.get("animals").asInt();
      }
    }
    assertEquals(40, sheep); // demo-data/parameters.csv: 40 animals
  }

  @Test
  void theCalcaneusIsNamedForSheepAndGoat() throws IOException {
    Typed typed = Typed.command("shelf", "stock", "--pairs", "--shelf", demo());
    assertEquals(0, typed.code(), typed.err());
    assertTrue(
        typed
            .out()
            .lines()
            .anyMatch(
                l ->
                    l.startsWith("Capra hircus and Ovis aries: the humerus")
                        && l.contains("Measure the calcaneus instead")),
        typed.out());
  }

  @Test
  void theWantedListHasGainsInFallingOrderAndReasons() throws IOException {
    Path out = folder.resolve("out.json");
    Typed typed = Typed.command("shelf", "wanted", "--shelf", demo(), "--json", out);
    assertEquals(0, typed.code(), typed.err());
    JsonNode list = new ObjectMapper().readTree(out.toFile());
    for (int i = 1; i < list.size(); i++) {
      assertTrue(list.get(i).get("gain").asDouble() <= list.get(i - 1).get("gain").asDouble());
    }
    assertTrue(list.size() > 20);
    assertTrue(list.get(0).get("gain").asDouble() > 0);
    assertTrue(!list.get(0).get("reason").asText().isBlank());
  }

  @Test
  void plantedFaultsAreCountedOnOneLine() {
    Typed typed = Typed.command("shelf", "check", "--planted");
    assertEquals(0, typed.code(), typed.err());
    assertTrue(
        typed.out().lines().anyMatch(l -> l.matches("planted faults: found \\d+ of 60, false .*")),
        typed.out());
  }

  private Path demo() throws IOException {
    return Files.writeString(folder.resolve("demo.csv"), DemoFiles.shipped("shelf.csv"));
  }

  private static String line(JsonNode list, String kind) {
    for (JsonNode f : list) {
      if (f.get("kind").asText().equals(kind)) {
        return String.join(
            " ",
            kind,
            f.get("animal").asText(),
            f.get("bone").asText(),
            f.get("column").asText(),
            f.get("value").asText(),
            f.get("accepted").asText());
      }
    }
    return "no " + kind;
  }
}
