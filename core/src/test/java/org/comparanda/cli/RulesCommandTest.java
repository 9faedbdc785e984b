package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** House Rules of the simulated Harrowmere collection. */
class RulesCommandTest {
  @TempDir Path folder;

  @Test
  void aRuleOfTheHouseHoldsForItsAnswersAndStaysOnRecord() throws IOException {
    Path room = Room.harrowmere(folder);
    Typed set =
        Typed.command(
            "rules",
            "set",
            "one-share",
            "0.999",
            "--by",
            "demo",
            "--why",
            "too many wrong names",
            "--collection",
            room);
    assertEquals(0, set.code(), set.err());
    List<String> easy = Files.readAllLines(Path.of("..", "demo-data", "tray-easy.csv"));
    Path one = Files.write(folder.resolve("one.csv"), easy.subList(0, 2));
    Path json = folder.resolve("one.json");
    Typed asked = Typed.command("suggest", one, "--collection", room, "--json", json);
    assertEquals(0, asked.code(), asked.err());
    JsonNode rules = new ObjectMapper().readTree(json.toFile()).get("rules");
    assertEquals(0.999, rules.get("thresholds").get("oneShare").asDouble());
    String history = Typed.command("rules", "list", "--history", "--collection", room).out();
    assertEquals(
        "2026-11-25T09:00:00Z, demo: one-share 0.999, because too many wrong names",
        history.strip());
    String now = Typed.command("rules", "list", "--collection", room).out();
    assertTrue(now.contains("one-share: 0.999 (a number from 0.5 to 0.9999)"), now);
  }

  @Test
  void aBadValueIsRefusedWithTheRangeAndNothingChanges() {
    Path room = Room.harrowmere(folder);
    Typed set =
        Typed.command("rules", "set", "nothing-fits", "0.06", "--by", "demo", "--collection", room);
    assertEquals(2, set.code());
    assertTrue(set.err().contains("above poor-fit, 0.05. The rule stays as it was."), set.err());
    Typed wide =
        Typed.command("rules", "set", "most-named", "99", "--by", "demo", "--collection", room);
    assertTrue(wide.err().contains("a whole number from 2 to 20"), wide.err());
    assertEquals(
        "", Typed.command("rules", "list", "--history", "--collection", room).out().strip());
  }
}
