package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Invented tables with lines of title above their header. */
class ShelfTitleTest {
  private static final String BELOW = "animal;taxon;element;GL [cm]\nA;Ovis aries;humerus;14,0\n";
  private static final String TITLE = "Sheep of the invented house\nmeasured 2024\n\n";

  @TempDir Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void names() {
    file = folder.resolve("room.comparanda");
  }

  @Test
  void theTableIsRefusedWithTheRowOfItsHeader() throws IOException {
    Typed added = add(table(TITLE + BELOW));
    assertAll(
        () -> assertEquals(2, added.code()),
        () ->
            assertTrue(
                added.err().contains("row 1: the header seems to stand in row 4, below a title"),
                added.err()),
        () -> assertTrue(added.err().contains("Say --header-row 4"), added.err()));
  }

  @ParameterizedTest
  @CsvSource({
    "'Sheep of the invented house\nmeasured 2024\n\n',4",
    "'Sheep;;;\n',2",
    "'\"Sheep, goats\n and others\";;\n\n',3",
    "'Sheep, goats, all\n',2",
    "'\n\n',3"
  })
  void toldTheRowItIsReadFromThere(String title, long row) throws IOException {
    Typed added = add(table(title + BELOW), "--header-row", row);
    assertAll(
        () -> assertEquals(0, added.code(), added.err()),
        () -> assertTrue(added.out().contains("it now holds 1 animal."), added.out()));
  }

  @Test
  void problemsAreOfTheRowsAsTheyStandInTheFile() throws IOException {
    Typed added = add(table(TITLE + BELOW.replace("14,0", "x")), "--header-row", "4");
    assertTrue(added.err().contains("row 5, column GL [cm]: not a number: \"x\""), added.err());
  }

  @Test
  void aSpreadsheetsTitleIsSeenToo() throws URISyntaxException {
    Path book =
        Path.of(
            Objects.requireNonNull(
                    ShelfTitleTest.class.getResource("/outside/spreadsheets/titled.xlsx"))
                .toURI());
    String seen = Typed.command("shelf", "look", book).out();
    Typed refused = add(book);
    Typed added = add(book, "--header-row", "4", "--as", "animal=Specimen,taxon=Species");
    assertAll(
        () -> assertTrue(seen.contains("the header seems to stand in row 4"), seen),
        () ->
            assertTrue(
                seen.contains("--header-row 4 --as \"animal=Specimen,taxon=Species\""), seen),
        () -> assertTrue(refused.err().contains("Say --header-row 4"), refused.err()),
        () -> assertEquals(0, added.code(), added.err()));
  }

  @Test
  void aTitleWithAnotherSeparatorInItIsSeenToo() throws IOException {
    Path table = table("Our sheep, goats and cattle, all invented\n\n" + BELOW);
    String seen = Typed.command("shelf", "look", table).out();
    assertAll(
        () -> assertTrue(seen.startsWith("semicolon between columns; the header seems to"), seen),
        () -> assertTrue(add(table).err().contains("Say --header-row 3"), "refused with the row"));
  }

  @Test
  void theLookGivesTheWordsThatReadIt() throws IOException {
    String seen = Typed.command("shelf", "look", table(TITLE + BELOW)).out();
    assertTrue(seen.contains("shelf add t.csv --header-row 4"), seen);
  }

  @Test
  void aSavedMappingKeepsTheRow() throws IOException {
    Path first = table(TITLE + BELOW);
    assertEquals(0, add(first, "--header-row", "4", "--save-mapping", "titled").code());
    Path next = Files.writeString(folder.resolve("n.csv"), TITLE + BELOW.replace("\nA;", "\nB;"));
    assertEquals(0, add(next, "--mapping", "titled").code());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-3", "x"})
  void aRowThatIsNoneIsRefused(String row) throws IOException {
    Typed added = add(table(BELOW), "--header-row", row);
    assertAll(() -> assertEquals(2, added.code()), () -> assertTrue(added.err().contains(row)));
  }

  @Test
  void aRowBehindTheEndIsRefused() throws IOException {
    Typed added = add(table(BELOW), "--header-row", "9");
    assertTrue(added.err().contains("there is no header row that can be read"), added.err());
  }

  private Typed add(Path table, Object... more) {
    Object[] all = new Object[5 + more.length];
    System.arraycopy(new Object[] {"shelf", "add", table, "--collection", file}, 0, all, 0, 5);
    System.arraycopy(more, 0, all, 5, more.length);
    return Typed.command(all);
  }

  private Path table(String text) throws IOException {
    return Files.writeString(folder.resolve("t.csv"), text);
  }
}
