package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.comparanda.daybook.Verdict;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An invented table of a house with words of its own: look, dry run, saved mapping, again. */
class ShelfMappingTest {
  private static final String TABLE =
      """
      Specimen;Species;Skelettelement;Seite;Bd (cm);GL_mm;Observer
      H-1;Ovis aries;humerus;left;3,1;150,2;x
      H-2;Capra hircus;humerus;right;3,0;148,1;y
      """;
  private static final String AS =
      "animal=Specimen,taxon=Species,element=Skelettelement,side=Seite,GL=GL_mm";

  @TempDir Path folder;
  private Path table = Path.of("");
  private Path file = Path.of("");

  @BeforeEach
  void prepare() throws IOException {
    table = Files.writeString(folder.resolve("house.csv"), TABLE);
    file = folder.resolve("room.comparanda");
  }

  @Test
  void aLookGuessesEachColumnAndGivesTheWordsForIt() {
    String seen = Typed.command("shelf", "look", table).out();
    assertAll(
        () -> assertTrue(seen.contains("Specimen: animal (another word)"), seen),
        () -> assertTrue(seen.contains("Bd (cm): Bd (same name), in cm   e.g. 3,1 | 3,0"), seen),
        () -> assertTrue(seen.contains("Observer: not known"), seen),
        () -> assertTrue(seen.contains("--leave \"Observer\" --unit \"GL=mm\""), seen));
  }

  @Test
  void aDryRunStoresNothingAndMakesNoCollection() {
    Typed dry =
        Typed.command(
            "shelf",
            "add",
            table,
            "--collection",
            file,
            "--as",
            AS,
            "--leave",
            "Observer",
            "--dry-run");
    assertAll(
        () -> assertEquals(0, dry.code(), dry.err()),
        () ->
            assertEquals(
                "Dry run: the table is sound. It would bring 2 animals of 2 names with 2 bones; the"
                    + " collection holds 0 animals. Nothing was stored.",
                dry.out().strip()),
        () -> assertFalse(Files.exists(file)));
  }

  @Test
  void aSavedMappingReadsTheNextTableOfItsKind() throws IOException {
    Typed first =
        Typed.command(
            "shelf",
            "add",
            table,
            "--collection",
            file,
            "--as",
            AS,
            "--leave",
            "Observer",
            "--save-mapping",
            "house");
    assertEquals(0, first.code(), first.err());
    Path next = Files.writeString(folder.resolve("next.csv"), TABLE.replace("H-", "I-"));
    Typed second = Typed.command("shelf", "add", next, "--collection", file, "--mapping", "house");
    Path text =
        Files.writeString(
            folder.resolve("house.json"),
            Typed.command("shelf", "mappings", "--collection", file, "--show", "house").out());
    Path third = Files.writeString(folder.resolve("third.csv"), TABLE.replace("H-", "J-"));
    Typed byFile = Typed.command("shelf", "add", third, "--collection", file, "--mapping", text);
    Typed unknown = Typed.command("shelf", "add", third, "--collection", file, "--mapping", "hose");
    assertAll(
        () -> assertEquals(0, second.code(), second.err()),
        () -> assertEquals(0, byFile.code(), byFile.err()),
        () -> assertTrue(byFile.out().contains("it now holds 6 animals")),
        () -> assertTrue(unknown.err().contains("There is no mapping \"hose\"")));
    try (Collection room = Collection.open(file, Typed.CLOCK)) {
      assertEquals(
          31.0, // 3,1 cm
          room.animals()
              .shelf()
              .animals()
              .get(0)
              .bones()
              .get(0)
              .values()
              .values()
              .iterator()
              .next());
    }
  }

  @Test
  void aSavedMappingIsDeletedAndTheDayBookStaysSound() {
    Typed.command(
        "shelf",
        "add",
        table,
        "--collection",
        file,
        "--as",
        AS,
        "--leave",
        "Observer",
        "--save-mapping",
        "house");
    assertEquals("house", Typed.command("shelf", "mappings", "--collection", file).out().strip());
    Typed gone = Typed.command("shelf", "mappings", "--collection", file, "--delete", "house");
    assertEquals(0, gone.code(), gone.err());
    assertEquals("", Typed.command("shelf", "mappings", "--collection", file).out().strip());
    Typed twice = Typed.command("shelf", "mappings", "--collection", file, "--delete", "house");
    assertTrue(twice.err().contains("There is no mapping \"house\""), twice.err());
    try (Collection room = Collection.open(file, Typed.CLOCK)) {
      assertTrue(room.verifyDayBook() instanceof Verdict.Sound);
    }
  }

  @Test
  void aFileImportedBeforeIsKnownAgainUnderAnotherName() throws IOException {
    Typed.command("shelf", "add", table, "--collection", file, "--as", AS, "--leave", "Observer");
    Path copy = Files.copy(table, folder.resolve("copy.csv"));
    Typed again =
        Typed.command(
            "shelf", "add", copy, "--collection", file, "--as", AS, "--leave", "Observer");
    assertAll(
        () -> assertEquals(2, again.code()),
        () ->
            assertTrue(
                again
                    .err()
                    .contains(
                        "\"copy.csv\" was imported before, on 2026-11-25T09:00:00Z under the name"
                            + " \"house.csv\", with 2 animals. Nothing was stored."),
                again.err()));
  }

  @Test
  void aBrokenMappingSaysWhatIsWrong() throws IOException {
    Path broken = Files.writeString(folder.resolve("b.json"), "{\"mapping\":1,\"colums\":{}}");
    Path noJson = Files.writeString(folder.resolve("c.json"), "columns");
    assertAll(
        () ->
            assertTrue(
                Typed.command("shelf", "add", table, "--collection", file, "--mapping", broken)
                    .err()
                    .contains("it has the field \"colums\", which nobody knows")),
        () ->
            assertTrue(
                Typed.command("shelf", "add", table, "--collection", file, "--mapping", noJson)
                    .err()
                    .contains("it is no JSON")));
  }
}
