package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import org.comparanda.bone.BoneAge;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrayNumberTest {
  @TempDir private Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void make() {
    file = folder.resolve("c.comparanda");
    try (Collection made = Collection.create(file, Clock.systemUTC())) {
      made.trays()
          .save(
              new Tray(new TrayId("t1"), "L1", "Tray", BoneAge.RECENT, "", "", Tray.State.WAITING));
    }
  }

  private void keeper() {
    Typed given = Typed.command("rights", "give", "k", "keeper", "--by", "k", "--collection", file);
    assertEquals(0, given.code(), given.err());
  }

  private Typed rule(String rule, String by) {
    return Typed.command("tray", "number", "t1", rule, "--by", by, "--collection", file);
  }

  @Test
  void onlyAKeeperSetsTheRuleAsOnTheScreen() {
    assertTrue(rule("X-{number}", "p").err().contains("Nobody is keeper yet"));
    keeper();
    Typed other = rule("X-{number}", "p");
    assertEquals(2, other.code());
    assertTrue(
        other.err().contains("\"p\" has not the right keeper, so the rule of bone numbers stays."),
        other.err());
    Typed nobody = Typed.command("tray", "number", "t1", "X-{number}", "--collection", file);
    assertTrue(nobody.err().contains("Nobody sets the rule. Nothing was changed."), nobody.err());
  }

  @Test
  void theRuleIsSetAndTheNextNumberShown() {
    keeper();
    Typed set = rule("{lot}-{number:3}", "k");
    assertEquals(0, set.code(), set.err());
    Typed shown = Typed.command("tray", "number", "t1", "--collection", file);
    assertTrue(
        shown.out().contains("gets the number L1-001, by the rule {lot}-{number:3}."), shown.out());
  }

  @Test
  void aRuleWithoutNumberIsRefusedAndTheOldOneStays() {
    keeper();
    Typed refused = rule("H-{year}", "k");
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("Nothing was changed."), refused.err());
    Typed shown = Typed.command("tray", "number", "t1", "--collection", file);
    assertTrue(shown.out().contains("B-{year}-{number:4}"), shown.out());
  }
}
