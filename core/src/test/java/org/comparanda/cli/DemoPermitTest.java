package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.comparanda.demo.Harrowmere;
import org.comparanda.register.AnimalCard;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The one animal of the demo that is under an invented permit. */
class DemoPermitTest {
  @TempDir Path folder;
  private Path room = Path.of("");

  @BeforeEach
  void theDemo() {
    room = Room.harrowmere(folder);
  }

  @Test
  void itsHandOverIsRemindedOfInThePermitsWords() {
    Typed said = Typed.command("shelf", "reminders", "--collection", room);
    assertEquals(
        "HB-0255 is to be handed over by 2027-01-09. Permit HR-PERMIT-07 (invented) decides. It"
            + " says: \"on loan for comparison; neither the skeleton nor its record leaves the"
            + " house; hand over by the day named\".",
        said.out().strip());
  }

  @Test
  void itsRecordIsHeldBackAndThatIsSaid() throws IOException {
    Path out = folder.resolve("out.csv");
    Typed said = Typed.command("export", "shelf", out, "--collection", room);
    String table = Files.readString(out);
    assertAll(
        () -> assertEquals(0, said.code(), said.err()),
        () -> assertTrue((said.out() + said.err()).contains("1 "), said.out() + said.err()),
        () -> assertTrue((said.out() + said.err()).contains("held back"), said.out()),
        () -> assertFalse(table.contains("HB-0255")),
        () -> assertTrue(table.contains("HB-0254")));
  }

  @Test
  void allElseIsAsInTheShippedTable() {
    try (Collection demo = Collection.open(room, Typed.CLOCK)) {
      List<AnimalCard> cards = demo.register().all();
      assertEquals(
          Harrowmere.read(ReferenceTables.shipped()).shelf().animals(),
          cards.stream().map(AnimalCard::animal).toList());
      assertEquals(
          List.of("HB-0255"),
          cards.stream()
              .filter(c -> !c.equals(AnimalCard.of(c.animal())))
              .map(c -> c.id().value())
              .toList());
    }
  }
}
