package org.comparanda.exchange.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Workbooks written by openpyxl 3.1.5 ({@code outside/spreadsheets/make.py}); the expected values
 * are those of that script.
 */
class SpreadsheetTest {
  private static final TableOptions PLAIN = TableOptions.withDefaults();

  @TempDir Path folder;
  private TableFixture files;

  @BeforeEach
  void prepare() {
    files = new TableFixture(folder);
  }

  @Test
  void cellsAreReadAsTheirSheetShowsThem() {
    TableRead<Shelf> read = read("plain.xlsx", PLAIN);
    Animal first = read.content().animals().get(0);
    Animal second = read.content().animals().get(1);
    assertAll(
        () -> assertEquals("0007", first.id().value()), // 7 in the number format 0000
        () -> assertEquals("2019-05-03", first.remarks()), // a date
        () -> assertEquals(140.1, first.bones().get(0).values().get(TableFixture.GL)),
        () -> assertEquals(29.5, first.bones().get(0).values().get(TableFixture.BD)),
        // 0.1 + 0.2 + 132 in doubles, 132.3 as Python prints it
        () -> assertEquals(132.3, second.bones().get(0).values().get(TableFixture.GL)));
  }

  /**
   * shared.xlsx is by XlsxWriter ({@code make_shared.py}): shared texts, a formula's last value.
   */
  @Test
  void aLongSheetWithFormulasIsReadByTheirLastValues() {
    Animal animal = read("shared.xlsx", PLAIN).content().animals().get(0);
    assertAll(
        () -> assertEquals(1, animal.bones().size()),
        () -> assertEquals(140.5, animal.bones().get(0).values().get(TableFixture.GL)),
        () -> assertEquals(30.5, animal.bones().get(0).values().get(TableFixture.BD)));
  }

  @Test
  void howTheSheetWasReadIsSaid() {
    String sentence = read("plain.xlsx", PLAIN).facts().sentence();
    assertAll(
        () -> assertTrue(sentence.contains("sheet \"Bones\""), sentence),
        () ->
            assertTrue(
                sentence.contains("One number was stored as text (row 2, column Bd [mm])"),
                sentence));
  }

  @Test
  void ofSeveralSheetsOneMustBeNamed() {
    ProblemReport report = files.refused(PLAIN, outside("two-sheets.xlsx"));
    assertAll(
        () ->
            assertEquals(
                Optional.of(new TableProblem.Answer.SaySheet(List.of("Sheep", "Goats"))),
                report.problems().get(0).answer()),
        () ->
            assertEquals(
                "B",
                read("two-sheets.xlsx", PLAIN.withSheet("Goats"))
                    .content()
                    .animals()
                    .get(0)
                    .id()
                    .value()),
        () ->
            assertTrue(
                files
                    .refused(PLAIN.withSheet("Cows"), outside("two-sheets.xlsx"))
                    .problems()
                    .get(0)
                    .remedy()
                    .contains("Sheep, Goats")));
  }

  @Test
  void wrongCellsAreNamedByTheirReference() {
    List<String> lines = files.refused(PLAIN, outside("wrong.xlsx")).lines();
    assertAll(
        () -> assertLine(lines, "(cell D2): a date, where a number is expected: \"2024-12-03\""),
        () -> assertLine(lines, "(cell E2): not a number: \"wide\""),
        () -> assertLine(lines, "(cell A3): a date, where text is expected: \"2024-03-12\""),
        () -> assertLine(lines, "(cell D3): the cell holds no value that can be read: \"#DIV/0!\""),
        () -> assertLine(lines, "(cell E3): the cell holds no value that can be read"),
        () -> assertLine(lines, "row 4: cell F4 stands beyond the header (\"31\")"));
  }

  @Test
  void damagedAndForeignFilesAreRefusedWithTheReason() throws IOException {
    byte[] whole = Files.readAllBytes(outside("plain.xlsx"));
    assertAll(
        () ->
            assertMessage("damaged", files.file(java.util.Arrays.copyOf(whole, whole.length / 2))),
        () -> assertMessage("no .xlsx workbook", packed("mimetype", "application/other")),
        () ->
            assertMessage(
                "old form (.xls) or locked by a password",
                files.file(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0})),
        () ->
            assertMessage(
                "what no spreadsheet program writes",
                repacked("xl/workbook.xml", "<!DOCTYPE a [<!ENTITY b \"bbbb\">]><a>&b;</a>")),
        () ->
            assertMessage(
                "what no spreadsheet program writes",
                repacked(
                    "xl/worksheets/sheet2.xml",
                    "<worksheet><sheetData><row r=\"1\"><c r=\"ZZZZZZ1\"/></row></sheetData>"
                        + "</worksheet>")),
        () -> assertMessage("damaged", repacked("xl/worksheets/sheet2.xml", "<worksheet><she")));
  }

  @Test
  void aCellThatUnpacksWithoutEndIsRefusedBeforeItIsKept() {
    assertMessage("one cell holds more", repacked("xl/styles.xml", "<a>" + "x".repeat(3 << 20)));
  }

  private void assertMessage(String words, Path table) {
    String message = files.refused(PLAIN, table).problems().get(0).message();
    assertTrue(message.contains(words), message);
  }

  private static void assertLine(List<String> lines, String words) {
    assertTrue(lines.stream().anyMatch(l -> l.contains(words)), String.join("\n", lines));
  }

  private static TableRead<Shelf> read(String name, TableOptions options) {
    return TableFixture.reader(options)
        .shelf(outside(name))
        .fold(
            read -> read,
            report -> {
              throw new AssertionError(String.join("\n", report.lines()));
            });
  }

  private static Path outside(String name) {
    try {
      return Path.of(
          Objects.requireNonNull(SpreadsheetTest.class.getResource("/outside/spreadsheets/" + name))
              .toURI());
    } catch (java.net.URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  private Path packed(String part, String content) {
    Path made = folder.resolve("packed.xlsx");
    try (OutputStream out = Files.newOutputStream(made);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry(part));
      zip.write(content.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return made;
  }

  /** plain.xlsx with another content in one part. */
  private Path repacked(String part, String content) {
    Path made = folder.resolve("repacked.xlsx");
    try (java.util.zip.ZipFile from = new java.util.zip.ZipFile(outside("plain.xlsx").toFile());
        OutputStream out = Files.newOutputStream(made);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (ZipEntry entry : java.util.Collections.list(from.entries())) {
        zip.putNextEntry(new ZipEntry(entry.getName()));
        if (entry.getName().equals(part)) {
          zip.write(content.getBytes(StandardCharsets.UTF_8));
        } else {
          try (InputStream in = from.getInputStream(entry)) {
            in.transferTo(zip);
          }
        }
      }
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return made;
  }
}
