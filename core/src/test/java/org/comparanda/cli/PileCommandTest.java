package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.comparanda.daybook.Verdict;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented arrivals at the demo's room. */
class PileCommandTest {
  @TempDir Path folder;

  @Test
  void whatComesInIsListedInItsOrderAndPrinted() throws IOException {
    Path room = Room.harrowmere(folder);
    done("pile", "add", "A-1", "--taxon", "Ovis aries", "--from", "a farm", "--collection", room);
    done(
        "pile",
        "add",
        "A-2",
        "--taxon",
        "Meles meles",
        "--from",
        "a road",
        "--permit",
        "P 7",
        "--stage",
        "macerating",
        "--came-in",
        "2026-11-01",
        "--collection",
        room);
    String before = Typed.command("pile", "list", "--collection", room).out();
    done(
        "pile", "ask", "A-2", "--by", "anna", "--reason", "teeth of badgers", "--collection", room);
    done("pile", "stage", "A-2", "to_measure", "--collection", room);
    String after = Typed.command("pile", "list", "--collection", room).out();
    Path pdf = folder.resolve("pile.pdf");
    done("slips", "pile", pdf, "--collection", room, "--paper", "letter");
    Path json = folder.resolve("pile.json");
    done("pile", "list", "--collection", room, "--json", json);
    assertAll(
        () -> assertTrue(before.startsWith("1. A-1, Ovis aries (carcass), frozen"), before),
        () ->
            assertTrue(
                after.startsWith(
                    "1. A-2, Meles meles (carcass), to measure, since 2026-11-01, from a road,"
                        + " permit P 7. Asked for by anna: teeth of badgers. No gain can be"
                        + " computed for this name."),
                after),
        () -> assertTrue(Files.readString(json).contains("\"reason\" : \"teeth of badgers\"")));
    try (PDDocument pages = Loader.loadPDF(pdf.toFile())) {
      String text = new PDFTextStripper().getText(pages);
      assertTrue(text.contains("Asked for by anna: teeth of badgers."), text);
    }
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      assertInstanceOf(Verdict.Sound.class, opened.verifyDayBook());
    }
  }

  @Test
  void wrongNumbersAndDaysAreRefused() {
    Path room = folder.resolve("room.comparanda");
    Collection.create(room, Typed.CLOCK).close();
    Typed.command("pile", "add", "A", "--taxon", "Ovis aries", "--from", "x", "--collection", room);
    Typed twice =
        Typed.command(
            "pile", "add", "A", "--taxon", "Ovis aries", "--from", "x", "--collection", room);
    Typed later =
        Typed.command(
            "pile",
            "add",
            "B",
            "--taxon",
            "Ovis aries",
            "--from",
            "x",
            "--came-in",
            "2027-01-01",
            "--collection",
            room);
    Typed unknown = Typed.command("pile", "stage", "C", "cleaned", "--collection", room);
    assertAll(
        () -> assertEquals(2, twice.code()),
        () -> assertTrue(twice.err().contains("is on the pile already")),
        () -> assertTrue(later.err().contains("lies ahead")),
        () -> assertTrue(unknown.err().contains("There is no arrival \"C\"")));
  }

  private static void done(Object... words) {
    Typed done = Typed.command(words);
    assertEquals(0, done.code(), done.err());
  }
}
