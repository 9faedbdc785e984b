package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.comparanda.demo.DemoFiles;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code demo}, and its trays through {@code suggest}. Truths: issue 3, "Must show". */
class DemoCommandTest {
  @TempDir Path folder;

  @Test
  void theDemoLeavesItsCollectionAndSaysThatItIsSimulated() {
    Typed typed = Typed.command("demo", "--at", folder);
    Path file = folder.resolve("harrowmere.comparanda");
    assertEquals(0, typed.code(), typed.err());
    try (Collection demo = Collection.open(file, Typed.CLOCK)) {
      assertAll(
          () -> assertEquals(168, demo.animals().shelf().animals().size()),
          () -> assertEquals(12, demo.animals().shelf().taxa().size()),
          () -> assertEquals(4, demo.trays().all().size()),
          () -> assertTrue(typed.out().contains("simulated"), typed.out()),
          () -> assertTrue(typed.out().contains("Bone K-101"), typed.out()));
    }
  }

  // What the demo's generator recorded of HB-0252 is 3.66 m; the lesson is that the line with the
  // smaller error leaves it out and the other one holds it.
  @Test
  void theSlenderSnoutIsToldOnBothLines() {
    String out = Typed.command("demo", "--at", folder).out();
    Matcher rows =
        Pattern.compile(
                "held-out error ([0-9.]+) %\\): [0-9.]+ m, 95 % from ([0-9.]+) to ([0-9.]+)")
            .matcher(out);
    assertTrue(out.contains("HB-0252 has a slender snout and is 3.66 m long"), out);
    assertTrue(rows.find(), out);
    double tight = Double.parseDouble(rows.group(1));
    assertTrue(Double.parseDouble(rows.group(2)) > 3.66, out);
    assertTrue(rows.find(), out);
    assertTrue(Double.parseDouble(rows.group(1)) > tight, out);
    assertTrue(Double.parseDouble(rows.group(2)) < 3.66, out);
    assertTrue(Double.parseDouble(rows.group(3)) > 3.66, out);
  }

  @Test
  void theHardTraysStrangerCalfAndLookAlikesAreAnsweredHonestly() throws IOException {
    Map<String, String> answers = answers("tray-hard.csv");
    Map<String, String> truths = truths("hard");
    assertAll(
        () -> assertTrue(truths.containsValue("NOTHING_FITS"), "a stranger lies on the tray"),
        () -> assertTrue(truths.containsValue("YOUNG_BONE"), "a calf bone lies on the tray"),
        () -> assertEquals(truths, answers));
  }

  @Test
  void atLeastHalfOfTheEasyTrayFitsOne() throws IOException {
    Map<String, String> answers = answers("tray-easy.csv");
    long fitsOne = answers.values().stream().filter("FITS_ONE"::equals).count();
    assertTrue(2 * fitsOne >= answers.size(), answers.toString());
  }

  private Map<String, String> answers(String tray) throws IOException {
    Path shelf = Files.writeString(folder.resolve("shelf.csv"), DemoFiles.shipped("shelf.csv"));
    Path bones = Files.writeString(folder.resolve(tray), DemoFiles.shipped(tray));
    Path json = folder.resolve("out.json");
    Typed typed = Typed.command("suggest", bones, "--shelf", shelf, "--json", json);
    assertEquals(0, typed.code(), typed.err());
    Map<String, String> answers = new HashMap<>();
    JsonNode list = new ObjectMapper().readTree(json.toFile()).get("bones");
    list.forEach(b -> answers.put(b.get("bone").asText(), b.get("answer").asText()));
    return answers;
  }

  private static Map<String, String> truths(String tray) throws IOException {
    Map<String, String> truths = new HashMap<>();
    Files.readAllLines(Path.of("..", "demo-data", "truth.csv")).stream()
        .map(line -> line.split(","))
        .filter(cells -> cells[1].equals(tray))
        .forEach(cells -> truths.put(cells[0], cells[3]));
    return truths;
  }
}
