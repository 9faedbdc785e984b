package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Animals are added, changed, merged and retired from a command line. All rows are invented. */
class RegisterCommandTest {
  private static final String SHELF =
      """
      animal,taxon,element,side,GL [mm]
      HB-1,Ovis aries,humerus,left,150
      HB-2,Ovis aries,humerus,right,151
      HB-3,Capra hircus,humerus,left,140
      """;

  @TempDir Path folder;
  private Path room;

  @BeforeEach
  void fill() throws IOException {
    room = folder.resolve("room.comparanda");
    Path table = Files.writeString(folder.resolve("shelf.csv"), SHELF);
    assertEquals(0, Typed.command("shelf", "add", table, "--collection", room).code());
  }

  private Typed shelf(Object... words) {
    Object[] all = new Object[words.length + 7];
    all[0] = "shelf";
    System.arraycopy(words, 0, all, 1, words.length);
    System.arraycopy(
        new Object[] {"--collection", room, "--by", "p1", "--why", "looked again"},
        0,
        all,
        words.length + 1,
        6);
    return Typed.command(all);
  }

  private String show(String number) {
    return Typed.command("shelf", "show", number, "--collection", room, "--history").out();
  }

  @Test
  void anEditSaysOldAndNewAndStandsInTheHistory() {
    Typed edited =
        shelf(
            "edit",
            "HB-1",
            "--set",
            "sex=female",
            "--set",
            "body_mass=45.5 kg",
            "--bone",
            "humerus",
            "--side",
            "left",
            "--value",
            "GL=15.15cm",
            "--bone-flags",
            "pathological");
    assertEquals(0, edited.code(), edited.err());
    assertTrue(edited.out().contains("sex: \"\" -> \"female\""), edited.out());
    assertTrue(edited.out().contains("humerus left GL: \"150\" -> \"151.5\""), edited.out());
    assertTrue(edited.out().contains("Changed 4 things of HB-1."), edited.out());
    assertTrue(show("HB-1").contains("body_mass: \"\" -> \"45500 g\""), show("HB-1"));
    assertTrue(
        show("HB-1").contains("by p1:") && show("HB-1").contains("why: looked again"),
        show("HB-1"));
  }

  @Test
  void aBoneUnderTheWrongSideIsMovedAndBadWordsAreRefused() {
    Typed moved = shelf("move", "HB-1", "--from", "humerus/left", "--to", "humerus/right");
    assertEquals(0, moved.code(), moved.err());
    assertTrue(
        moved.out().contains("Moved humerus left of HB-1: it is humerus right now."), moved.out());
    assertTrue(show("HB-1").contains("\"humerus left\" -> \"humerus right\""), show("HB-1"));
    Typed none = shelf("move", "HB-1", "--from", "femur/left", "--to", "femur/right");
    assertEquals(2, none.code());
    assertTrue(none.err().contains("HB-1 has no femur left. Nothing was moved."), none.err());
    Typed word = shelf("move", "HB-1", "--from", "humerus/up", "--to", "femur/right");
    assertTrue(word.err().contains("\"up\" is no side. Nothing was moved."), word.err());
    assertTrue(
        shelf("move", "HB-1", "--from", "humerus", "--to", "femur/right")
            .err()
            .contains("\"humerus\" is no bone."));
  }

  @Test
  void everyWrongFieldIsNamedAndNothingIsStored() {
    Typed edited =
        shelf(
            "edit", "HB-1", "--set", "sex=female", "--set", "flags=plaster", "--set", "origin=zoo");
    assertEquals(2, edited.code());
    assertTrue(edited.err().contains("flags: \"plaster\" is not a word for it."), edited.err());
    assertTrue(edited.err().contains("origin: \"zoo\" is neither wild nor captive."), edited.err());
    assertTrue(edited.err().contains("Nothing was stored. Correct 2 things above."), edited.err());
    assertFalse(show("HB-1").contains("female"), show("HB-1"));
    Typed code = shelf("edit", "HB-1", "--bone", "humerus", "--side", "left", "--value", "XX=3");
    assertEquals(2, code.code());
    assertTrue(code.err().contains("\"XX\" is no measurement of the humerus."), code.err());
  }

  @Test
  void aNewAnimalIsAddedOnce() {
    assertEquals(0, shelf("edit", "HB-9", "--new", "--set", "taxon=Ovis aries").code());
    Typed again = shelf("edit", "HB-9", "--new", "--set", "taxon=Ovis aries");
    assertEquals(2, again.code());
    assertTrue(again.err().contains("\"HB-9\" was given already."), again.err());
  }

  @Test
  void twoNumbersAreMergedAndTheSecondStillFound() {
    Typed dry = shelf("merge", "HB-1", "HB-2", "--dry-run");
    assertEquals("Would merge HB-2 into HB-1, which has 2 bones.", dry.out().strip());
    assertTrue(show("HB-2").startsWith("HB-2, on the shelf"), show("HB-2"));
    Typed merged = shelf("merge", "HB-1", "HB-2");
    assertEquals(0, merged.code(), merged.err());
    assertTrue(show("HB-2").startsWith("HB-2, merged into HB-1"), show("HB-2"));
    Typed goat = shelf("merge", "HB-1", "HB-3");
    assertEquals(2, goat.code());
    assertTrue(goat.err().contains("HB-1 is Ovis aries and HB-3 is Capra hircus."), goat.err());
  }

  @Test
  void aRetiredAnimalIsOutOfTheStockAndComesBack() {
    assertEquals(0, shelf("retire", "HB-3").code());
    assertFalse(
        Typed.command("shelf", "stock", "--collection", room).out().contains("Capra hircus"));
    assertTrue(show("HB-3").startsWith("HB-3, retired"), show("HB-3"));
    assertEquals(0, shelf("retire", "HB-3", "--back").code());
    assertTrue(
        Typed.command("shelf", "stock", "--collection", room).out().contains("Capra hircus"));
  }

  @Test
  void aTableThatBringsARetiredNumberIsRefused() throws IOException {
    assertEquals(0, shelf("retire", "HB-3").code());
    Path table =
        Files.writeString(
            folder.resolve("more.csv"),
            "animal,taxon,element,side,GL [mm]\nHB-3,Capra hircus,humerus,left,140\n");
    Typed added = Typed.command("shelf", "add", table, "--collection", room);
    assertEquals(2, added.code());
    assertFalse(added.err().contains("program itself failed"), added.err());
    assertTrue(added.err().contains("HB-3"), added.err());
  }

  @Test
  void aHandOverIsRemindedOfInThePermitsWords() {
    shelf(
        "edit",
        "HB-1",
        "--set",
        "permit=P 17",
        "--set",
        "permit_words=back by new year",
        "--set",
        "hand_over_by=2026-12-31",
        "--set",
        "export=forbidden");
    Typed list = Typed.command("shelf", "reminders", "--collection", room);
    assertEquals(
        "HB-1 is to be handed over by 2026-12-31. Permit P 17 decides. It says: \"back by new"
            + " year\".",
        list.out().strip());
  }

  @Test
  void anAnimalThatMayNotBeExportedKeepsAnOpenCopyInTheHouse() {
    shelf("edit", "HB-1", "--set", "permit=P 17", "--set", "export=forbidden");
    Path out = folder.resolve("copy.jsonl");
    Typed refused = Typed.command("export", "open-copy", out, "--collection", room);
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("1 animal of the collection may not be exported"));
    assertFalse(Files.exists(out));
    Typed inHouse =
        Typed.command("export", "open-copy", out, "--collection", room, "--stays-in-the-house");
    assertEquals(0, inHouse.code(), inHouse.err());
    assertTrue(inHouse.out().contains("1 animal that may not be exported"), inHouse.out());
    Path back = folder.resolve("back.comparanda");
    assertEquals(0, Typed.command("restore", out, "--into", back).code());
    assertEquals(
        show("HB-1"),
        Typed.command("shelf", "show", "HB-1", "--collection", back, "--history").out());
  }
}
