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

  @Test
  void theRuleIsSetAndTheNextNumberShown() {
    Typed set = Typed.command("tray", "number", "t1", "{lot}-{number:3}", "--collection", file);
    assertEquals(0, set.code(), set.err());
    Typed shown = Typed.command("tray", "number", "t1", "--collection", file);
    assertTrue(
        shown.out().contains("gets the number L1-001, by the rule {lot}-{number:3}."), shown.out());
  }

  @Test
  void aRuleWithoutNumberIsRefusedAndTheOldOneStays() {
    Typed refused = Typed.command("tray", "number", "t1", "H-{year}", "--collection", file);
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("Nothing was changed."), refused.err());
    Typed shown = Typed.command("tray", "number", "t1", "--collection", file);
    assertTrue(shown.out().contains("B-{year}-{number:4}"), shown.out());
  }
}
