package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Qualifier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code daybook} on the demo's collection (simulated). */
class DayBookCommandTest {
  @TempDir Path folder;
  private Path room = Path.of("");
  private String head = "";

  @BeforeEach
  void demoWithACall() {
    room = Room.harrowmere(folder);
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      opened.trays().record(Room.call("K-101", "Capreolus capreolus", Qualifier.NONE, "by eye"));
      head = opened.dayBookHead();
    }
  }

  @Test
  void untouchedCollectionHoldsUpToItsHead() {
    Typed typed = Typed.command("daybook", "verify", "--head", head, "--collection", room);
    assertEquals(0, typed.code(), typed.out());
    assertTrue(typed.out().contains("nothing before the head " + head + " was changed"));
  }

  @Test
  void changedCallIsFoundAndNamed() throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + room);
        Statement statement = connection.createStatement()) {
      statement.execute("drop trigger bone_call_never_changed");
      statement.execute("update bone_call set taxon = 'Ovis aries'");
    }
    Typed typed = Typed.command("daybook", "verify", "--head", head, "--collection", room);
    assertEquals(1, typed.code());
    assertTrue(typed.out().contains("The row of call 1 is gone or not what"), typed.out());
  }

  @Test
  void headOfAnotherCollectionIsRefused() {
    Typed typed =
        Typed.command("daybook", "verify", "--head", "0".repeat(64), "--collection", room);
    assertEquals(1, typed.code());
    assertTrue(typed.out().contains("is not in this Day Book"), typed.out());
  }

  @Test
  void showListsWhatChangedAndTheHead() {
    Typed typed = Typed.command("daybook", "show", "--of", "call", "--collection", room);
    assertEquals(0, typed.code(), typed.err());
    assertTrue(typed.out().contains("  call 1"), typed.out());
    assertTrue(typed.out().contains("Head of the Day Book: " + head), typed.out());
    assertEquals(2, typed.out().lines().count());
  }
}
