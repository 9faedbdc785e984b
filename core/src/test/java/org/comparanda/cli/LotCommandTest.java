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

/** Lots by script. All rows are invented. */
class LotCommandTest {
  @TempDir Path folder;
  private Path room = Path.of("");

  @BeforeEach
  void onceFilled() throws IOException {
    room = Room.harrowmere(folder);
    Files.writeString(folder.resolve("one.csv"), "bone,element,side\nQ-1,humerus,left\n");
    Files.writeString(folder.resolve("two.csv"), "bone,element,side\nQ-2,humerus,left\n");
  }

  private Typed run(Object... words) {
    Object[] all = java.util.Arrays.copyOf(words, words.length + 2);
    all[words.length] = "--collection";
    all[words.length + 1] = room;
    return Typed.command(all);
  }

  @Test
  void provenanceAndHazardsBelongToTheLotAndComeBeforeItsFirstBone() {
    Typed first =
        run(
            "tray",
            "add",
            folder.resolve("one.csv"),
            "--tray",
            "q1",
            "--lot",
            "Quarry",
            "--by",
            "demo",
            "--place",
            "old quarry",
            "--hazards",
            "silica dust");
    assertEquals(0, first.code(), first.err());
    assertTrue(
        first.err().contains("Before the first bone of lot Quarry: silica dust"), first.err());
    Typed second =
        run(
            "tray",
            "add",
            folder.resolve("two.csv"),
            "--tray",
            "q2",
            "--lot",
            "Quarry",
            "--by",
            "demo",
            "--hazards",
            "mould");
    assertTrue(second.err().contains("lot Quarry: silica dust; mould"), second.err());
    Typed shown = run("tray", "lot", "Quarry");
    assertTrue(shown.out().contains("found: old quarry"), shown.out());
    assertTrue(shown.out().contains("tray q2: waiting; hazards: mould"), shown.out());

    Typed call = run("tray", "call", "Q-1", "Ovis sp.", "--by", "demo", "--basis", "by eye");
    assertTrue(call.err().contains("Before the first bone of lot Quarry: silica dust"), call.err());
    Typed next = run("tray", "call", "Q-2", "Ovis sp.", "--by", "demo", "--basis", "by eye");
    assertFalse(next.err().contains("Before the first bone"), next.err());
  }

  @Test
  void whatIsNotSaidOfALotStaysAndNobodyRecordsWithoutAName() {
    run("tray", "lot", "Harrowmere easy", "--hazards", "arsenic", "--by", "demo");
    Typed nobody = run("tray", "lot", "Harrowmere easy", "--hazards", "");
    assertEquals(2, nobody.code());
    assertTrue(nobody.err().contains("Nothing was changed"), nobody.err());
    Typed open = run("tray", "lot", "Harrowmere easy", "go_out", "--by", "demo");
    assertTrue(open.out().contains("hazards: arsenic"), open.out());
    assertTrue(open.out().contains("places: go out"), open.out());
    assertTrue(open.out().contains("found: Harrowmere Bone Room"), open.out());
    Typed unknown = run("tray", "lot", "Nowhere", "--remarks", "x", "--by", "demo");
    assertEquals(2, unknown.code());
    assertTrue(unknown.err().contains("No tray is of the lot \"Nowhere\""), unknown.err());
  }
}
