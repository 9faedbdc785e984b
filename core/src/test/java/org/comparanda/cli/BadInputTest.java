package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong is said once, with its remedy; the collection stays as it was (issue 3). */
class BadInputTest {
  private static final String SOUND =
      """
      animal,taxon,element,side,GL,Bd
      A-1,Ovis aries,humerus,left,155.2,34.1
      A-2,Ovis aries,humerus,left,151.0,33.0
      A-3,Ovis aries,humerus,left,149.5,32.2
      A-4,Ovis aries,humerus,left,158.3,35.0
      A-5,Ovis aries,humerus,left,153.1,33.9
      """;

  @TempDir static Path room; // one collection for all: nothing here may change it
  @TempDir Path folder;
  private final Path collection = room.resolve("room.comparanda");
  private String before = "";

  @BeforeAll
  static void aCollectionOfFiveAnimals() throws IOException {
    Path collection = room.resolve("room.comparanda");
    Path table = Files.writeString(room.resolve("sound.csv"), SOUND);
    Typed typed = Typed.command("shelf", "add", table, "--collection", collection);
    assertEquals(0, typed.code(), typed.err());
  }

  @BeforeEach
  void whatItHolds() {
    before = contentHash();
  }

  private String contentHash() {
    try (Collection opened = Collection.open(collection, Typed.CLOCK)) {
      return opened.contentHash();
    }
  }

  /** Rows are parted by {@code /}. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          wrong header      | animal,taxon,element,GLL/B,Ovis aries,humerus,150             | row 1, column GLL | nearest is GL
          letter in number  | animal,taxon,element,GL/B,Ovis aries,humerus,15O              | row 2, column GL  | "15O"
          two taxa in file  | animal,taxon,element,GL/B,Ovis aries,humerus,150/B,Capra hircus,femur,170 | row 3, column taxon | two taxa
          against collection | animal,taxon,element,GL/A-1,Capra hircus,humerus,150        | row 2, column taxon | two taxa
          already there     | animal,taxon,element,GL/A-1,Ovis aries,humerus,150            | row 2, column animal | already in the collection
          inches            | animal,taxon,element,GL/B,Ovis aries,humerus,6.1/C,Ovis aries,humerus,6.0 | column GL | --unit GL=in
          centimetres among siblings | animal,taxon,element,GL,Bd/B,Ovis aries,humerus,150,3.3/C,Ovis aries,humerus,155,3.4 | column Bd | --unit Bd=cm
          longer row        | animal,taxon,element,GL/B,Ovis aries,humerus,150,3            | row 2 | cells
          unclosed quote    | animal,taxon,element,GL/B,"Ovis aries,humerus,150             | row 2 | never closed
          three decimals    | animal;taxon;element;GL/B;Ovis aries;humerus;150,125          | row 2, column GL | --decimal comma
          """)
  void aBadTableIsRefusedAndTheCollectionStaysAsItWas(
      String what, String text, String place, String remedy) throws IOException {
    Path table = Files.writeString(folder.resolve("bad.csv"), text.replace('/', '\n'));
    refused(table, place, remedy);
  }

  @Test
  void emptyBinaryAndForeignTextIsRefused() throws IOException {
    refused(Files.write(folder.resolve("empty.csv"), new byte[0]), "empty.csv", "empty");
    refused(
        Files.write(folder.resolve("sheet.csv"), new byte[] {'P', 'K', 3, 4, 0, 0}),
        "sheet.csv",
        "spreadsheet is damaged");
    refused(
        Files.write(folder.resolve("picture.csv"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 0}),
        "picture.csv",
        "binary");
    byte[] latin =
        "animal,taxon,element,GL,remarks\nB,Ovis aries,humerus,150,na\u00efve\n"
            .getBytes(StandardCharsets.ISO_8859_1);
    refused(Files.write(folder.resolve("latin.csv"), latin), "row 2", "UTF-8");
    refused(folder.resolve("nowhere.csv"), "nowhere.csv", "no such file");
  }

  // 2 MB in the ordinary tests; the same with 200 MB by -Pproof
  @Test
  void aVeryLargeFileOfNonsenseGetsOneReportOfBoundedLength() throws IOException {
    boolean full = System.getProperty("proof.size", "small").equals("full");
    long bytes = full ? 200L << 20 : 2L << 20;
    Path large = folder.resolve("large.csv");
    // with long remarks 200 MB stay under the 500,000 rows that a shelf may have
    String row = "B,Ovis aries,humerus,15O.25," + "x".repeat(full ? 500 : 1) + "\n";
    try (var out = Files.newBufferedWriter(large)) {
      out.write("animal,taxon,element,GL,remarks\n");
      for (long written = 32; written < bytes; written += row.length()) {
        out.write(row);
      }
    }
    Typed typed = refused(large, "row 2, column GL", "more; correct these first");
    assertTrue(typed.err().lines().count() < 10_100, "lines of the report");
  }

  @Test
  void moreRowsThanAShelfMayHaveAreRefusedBeforeAnyIsStored() throws IOException {
    Path many = folder.resolve("many.csv");
    try (var out = Files.newBufferedWriter(many)) {
      out.write("animal,taxon,element,GL\n");
      for (int i = 0; i <= 500_000; i++) {
        out.write("B,Ovis aries,humerus,1\n");
      }
    }
    refused(many, "many.csv", "500001 rows, more than a shelf may have (500000)");
  }

  @Test
  void aVeryLongLineIsRefused() throws IOException {
    Path table =
        Files.writeString(
            folder.resolve("line.csv"), "animal,taxon,element,GL\nB," + "x".repeat(4 << 20));
    refused(table, "row 2", "no CSV");
  }

  private Typed refused(Path table, String place, String words) {
    Typed typed = Typed.command("shelf", "add", table, "--collection", collection);
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code(), typed.err()),
        () -> assertEquals("", typed.out()),
        () -> assertTrue(typed.err().contains(place), typed.err()),
        () -> assertTrue(typed.err().contains(words), typed.err()),
        () -> assertTrue(typed.err().contains("Nothing of this file was stored"), typed.err()),
        () -> assertFalse(typed.err().contains("Exception"), typed.err()),
        () -> assertEquals(before, contentHash()));
    return typed;
  }

  @Test
  void aBadTableOfBonesGivesNoHalfAnswer() throws IOException {
    Path bones =
        Files.writeString(
            folder.resolve("bones.csv"),
            "bone,element,GL\nT-1,humerus,150\nT-2,humerus,x\nT-3,hummerus,150\n");
    Path json = folder.resolve("out.json");
    Typed typed = Typed.command("suggest", bones, "--collection", collection, "--json", json);
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code()),
        () -> assertEquals("", typed.out()),
        () -> assertTrue(typed.err().contains("2 problems"), typed.err()),
        () -> assertFalse(Files.exists(json)));
  }

  @Test
  void aMissingCollectionIsNamed() {
    Path nowhere = folder.resolve("nowhere.comparanda");
    Typed typed = Typed.command("trial", "--collection", nowhere);
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code()),
        () -> assertTrue(typed.err().contains("nowhere.comparanda"), typed.err()),
        () -> assertFalse(Files.exists(nowhere)));
  }

  @Test
  void aForeignFileIsLeftAsItIs() throws IOException {
    Path foreign = Files.writeString(folder.resolve("notes.comparanda"), "my own notes, kept here");
    Typed typed = Typed.command("shelf", "add", room.resolve("sound.csv"), "--collection", foreign);
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code()),
        () -> assertTrue(typed.err().contains("not a Comparanda collection"), typed.err()),
        () -> assertEquals("my own notes, kept here", Files.readString(foreign)));
  }

  @Test
  void aDamagedCollectionIsLeftAsItIs() throws IOException {
    Path copy = Files.copy(collection, folder.resolve("copy.comparanda"));
    try (RandomAccessFile file = new RandomAccessFile(copy.toFile(), "rw")) {
      file.setLength(file.length() / 2);
    }
    byte[] damaged = Files.readAllBytes(copy);
    Typed typed = Typed.command("trial", "--collection", copy);
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code(), typed.out()),
        () -> assertTrue(typed.err().contains("copy.comparanda"), typed.err()),
        () -> assertFalse(typed.err().contains("at org."), typed.err()),
        () ->
            assertEquals(
                java.util.Arrays.hashCode(damaged),
                java.util.Arrays.hashCode(Files.readAllBytes(copy))));
  }

  @Test
  void aCollectionThatAnotherProgramWritesIsSaidToBeLocked() throws IOException, SQLException {
    Path more =
        Files.writeString(
            folder.resolve("more.csv"), "animal,taxon,element,GL\nB,Ovis aries,humerus,150\n");
    try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + collection);
        Statement statement = other.createStatement()) {
      statement.execute("begin immediate");
      Typed typed = Typed.command("shelf", "add", more, "--collection", collection);
      statement.execute("rollback");
      assertAll(
          () -> assertEquals(Terminal.NOT_DONE, typed.code(), typed.out()),
          () -> assertTrue(typed.err().contains("another program"), typed.err()));
    }
    assertEquals(before, contentHash());
  }

  @Test
  void wordsThatMakeNoCommandAreAnsweredWithTheNearest() {
    Typed typed = Typed.command("sugest");
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code()),
        () -> assertTrue(typed.err().contains("suggest"), typed.err()));
  }

  @Test
  void noShelfOrTwoShelvesAreRefused() {
    Path table = room.resolve("sound.csv");
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, Typed.command("trial").code()),
        () ->
            assertEquals(
                Terminal.NOT_DONE,
                Typed.command("trial", "--shelf", table, "--collection", collection).code()));
  }
}
