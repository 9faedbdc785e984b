package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.comparanda.daybook.Verdict;
import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Call;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented cards, from the list to calls on a tray. */
class CardsCommandTest {
  private static final String LIST =
      """
      sheep, humerus left, Bd 29.5 mm; site Pit 4
      Ovis aries - humerus re. - Bd = 30,1 mm, site: "Old mill

      goat humerus left, somewhat worn
      human femur, left
      2 pcs pig, tibia
      """;

  @TempDir Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void prepare() throws IOException {
    file = folder.resolve("room.comparanda");
    Collection.create(file, Typed.CLOCK).close();
    Path list = Files.writeString(folder.resolve("old.txt"), LIST);
    assertEquals(
        "Kept 5 cards as found. Look at them by: cards shapes, cards list.",
        Typed.command("cards", "add", list, "--collection", file).out().strip());
  }

  @Test
  void aListBroughtInTwiceIsKeptOnce() {
    assertEquals(
        "Kept 0 cards as found; 5 were there already. Look at them by: cards shapes, cards list.",
        Typed.command("cards", "add", folder.resolve("old.txt"), "--collection", file)
            .out()
            .strip());
  }

  @Test
  void aListOfAnOldWindowsIsReadWhenItIsSaidSo() throws IOException {
    Path old = folder.resolve("windows.txt");
    Files.write(
        old, "sheep, humerus left\n\nZiege, Hügel\n".getBytes(Charset.forName("windows-1252")));
    Typed refused = Typed.command("cards", "add", old, "--collection", file);
    assertEquals(Terminal.NOT_DONE, refused.code());
    assertTrue(
        refused
            .err()
            .contains(
                "row 3: the text is not UTF-8. Say in which encoding it was saved (in a terminal"
                    + " --encoding). This line would read: windows-1252 \"Ziege, Hügel\", IBM850"
                    + " \"Ziege, H³gel\", x-MacRoman \"Ziege, H¸gel\"."),
        refused.err());
    Typed read =
        Typed.command("cards", "add", old, "--encoding", "windows-1252", "--collection", file);
    assertEquals(Terminal.FINE, read.code(), read.err());
    try (Collection room = Collection.open(file, Typed.CLOCK)) {
      assertEquals("Ziege, Hügel", room.oldCards().card(7).orElseThrow().card().text());
      assertEquals("windows.txt", room.oldCards().card(7).orElseThrow().card().source());
      assertEquals(3, room.oldCards().card(7).orElseThrow().card().row());
    }
    assertEquals(
        Terminal.NOT_DONE,
        Typed.command("cards", "add", old, "--encoding", "klingon", "--collection", file).code());
  }

  @Test
  void aColumnOfAnOldTableIsReadLikewise() throws IOException {
    Path old = folder.resolve("windows.csv");
    Files.write(
        old, "Nr;Text\n1;\"Schaf; Müller\"\n2;\n".getBytes(Charset.forName("windows-1252")));
    Typed read =
        Typed.command(
            "cards",
            "add",
            old,
            "--text",
            "Text",
            "--encoding",
            "windows-1252",
            "--collection",
            file);
    assertEquals(Terminal.FINE, read.code(), read.err());
    try (Collection room = Collection.open(file, Typed.CLOCK)) {
      assertEquals("Schaf; Müller", room.oldCards().card(6).orElseThrow().card().text());
    }
  }

  @Test
  void plainCardsOfOneShapeBecomeCallsTogether() {
    Typed done =
        Typed.command(
            "cards",
            "accept",
            "--shape",
            "taxon element side measurement place",
            "--tray",
            "old",
            "--by",
            "anna",
            "--collection",
            file);
    assertEquals("Accepted 2 cards: 2 bones with a call on old.", done.out().strip(), done.err());
    try (Collection room = Collection.open(file, Typed.CLOCK)) {
      Call call = room.trays().callsOn(new BoneId("card-2")).get(0);
      assertAll(
          () -> assertEquals(2, room.trays().bonesOf(new TrayId("old")).size()),
          () -> assertEquals("anna", call.person().value()),
          () -> assertEquals("from an old card (old.txt, row 2)", call.basis()),
          () ->
              assertEquals(
                  List.of("30,1 mm"),
                  room.readings().of(new BoneId("card-2")).stream().map(r -> r.asTyped()).toList()),
          () ->
              assertTrue(
                  room.trays()
                      .bone(new BoneId("card-2"))
                      .orElseThrow()
                      .remarks()
                      .contains("site: \"Old mill")),
          () -> assertInstanceOf(Verdict.Sound.class, room.verifyDayBook()));
    }
  }

  @Test
  void aCardIsAcceptedSinglyWithWhatThePersonSays() {
    Typed done =
        Typed.command(
            "cards",
            "accept",
            "3",
            "--taxon",
            "Capra cf. hircus",
            "--side",
            "right",
            "--tray",
            "old",
            "--by",
            "anna",
            "--collection",
            file);
    assertAll(
        () -> assertEquals(0, done.code(), done.err()),
        () ->
            assertTrue(
                Typed.command("cards", "list", "--state", "accepted", "--collection", file)
                    .out()
                    .contains("accepted by anna: card-3")),
        () ->
            assertTrue(
                Typed.command(
                        "cards", "accept", "3", "--tray", "old", "--by", "b", "--collection", file)
                    .err()
                    .contains("was accepted before")));
  }

  @Test
  void severalPiecesBecomeSeveralBones() {
    assertEquals(
        "Accepted 1 card: 2 bones with a call on old.",
        Typed.command("cards", "accept", "5", "--tray", "old", "--by", "a", "--collection", file)
            .out()
            .strip());
  }

  @Test
  void humanRemainsAndUnknownCardsAreNotAccepted() {
    Typed human =
        Typed.command("cards", "accept", "4", "--tray", "o", "--by", "a", "--collection", file);
    Typed none =
        Typed.command("cards", "accept", "99", "--tray", "o", "--by", "a", "--collection", file);
    assertAll(
        () -> assertEquals(2, human.code()),
        () -> assertTrue(human.err().contains("names human remains. Nothing was stored.")),
        () -> assertTrue(none.err().contains("There is no card 99")));
  }

  @Test
  void whatIsRefusedKeepsItsTextAndTheReason() {
    Typed.command("cards", "refuse", "3", "--by", "a", "--reason", "lost", "--collection", file);
    String refused =
        Typed.command("cards", "list", "--state", "refused", "--collection", file).out();
    assertTrue(
        refused.contains("refused by a: lost") && refused.contains("goat humerus left, somewhat"),
        refused);
  }

  @Test
  void theProposalsAreWrittenAsJson() throws IOException {
    Path out = folder.resolve("cards.json");
    Typed.command("cards", "list", "--collection", file, "--json", out);
    assertTrue(
        Files.readString(out).contains("\"text\" : \"goat humerus left, somewhat worn\""),
        Files.readString(out));
  }

  @Test
  void aColumnOfATableHoldsCardsToo() throws IOException {
    Path table =
        Files.writeString(folder.resolve("t.csv"), "no;card\n1;\"pig, femur\"\n2;cow tibia\n");
    assertAll(
        () ->
            assertTrue(
                Typed.command("cards", "add", table, "--text", "card", "--collection", file)
                    .out()
                    .startsWith("Kept 2 cards")),
        () ->
            assertTrue(
                Typed.command("cards", "add", table, "--text", "cards", "--collection", file)
                    .err()
                    .contains("The nearest is card.")));
  }
}
