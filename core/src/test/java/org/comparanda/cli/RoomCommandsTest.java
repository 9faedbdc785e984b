package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The room's commands on the demo's collection (simulated). */
class RoomCommandsTest {
  @TempDir Path folder;
  private Path room = Path.of("");

  @BeforeEach
  void demo() {
    room = Room.harrowmere(folder);
  }

  private Typed typed(Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--collection", room));
    return Typed.command(all.toArray());
  }

  private String done(Object... words) {
    Typed typed = typed(words);
    assertEquals(0, typed.code(), typed.err());
    return typed.out();
  }

  private String refused(Object... words) {
    Typed typed = typed(words);
    assertEquals(2, typed.code(), typed.out());
    return typed.err();
  }

  @Test
  void wantedTrayStandsOnTopWithReasonRequesterAndPerson() {
    done(
        "tray",
        "priority",
        "harrowmere-fossil",
        "1",
        "--reason",
        "loan ends",
        "--requested-by",
        "a visitor (invented)",
        "--by",
        "demo");
    done("tray", "assign", "harrowmere-fossil", "--to", "p7", "--by", "demo");
    String first = done("tray", "list").lines().findFirst().orElse("");
    assertTrue(first.startsWith("harrowmere-fossil:"), first);
    assertTrue(first.contains("waiting with p7"), first);
    assertTrue(first.contains("priority 1 (loan ends, for a visitor (invented))"), first);
    assertTrue(
        refused("tray", "priority", "harrowmere-easy", "1", "--by", "demo").contains("a reason"));
  }

  @Test
  void hazardsAreShownBeforeTheFirstBone() {
    done("tray", "hazards", "harrowmere-easy", "arsenic: gloves", "--by", "demo");
    Typed typed = typed("tray", "state", "harrowmere-easy", "on_the_bench");
    assertTrue(typed.err().contains("arsenic: gloves"), typed.err());
  }

  @Test
  void bonesMoveTogetherOrNotAtAll() {
    refused("tray", "move", "K-101", "K-999", "--to-tray", "harrowmere-hard", "--by", "demo");
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      assertEquals(
          new TrayId("harrowmere-easy"),
          opened.trays().bone(new BoneId("K-101")).orElseThrow().tray());
    }
    assertTrue(
        done(
                "tray",
                "move",
                "K-101",
                "K-102",
                "--to-tray",
                "harrowmere-hard",
                "--goes-to",
                "box 7",
                "--by",
                "demo")
            .contains("Moved 2 bones."));
    assertTrue(done("search", "box", "7").contains("K-102"));
  }

  @Test
  void callAgainstTheNumbersAsksWhyAndTheHistoryIsADatedStrip() {
    String why = refused("tray", "call", "K-102", "Ovis aries", "--by", "demo", "--basis", "eye");
    assertTrue(why.contains("goes against what the numbers say. Nothing was recorded."), why);
    done(
        "tray",
        "call",
        "K-102",
        "Ovis aries",
        "--by",
        "demo",
        "--basis",
        "eye",
        "--why",
        "the groove is open",
        "--trait",
        "sheep-goat-radius-bump=cant_see");
    done("tray", "element", "K-102", "tibia", "--side", "left", "--by", "demo");
    done("tray", "withdraw", "K-102", "1", "--by", "demo", "--reason", "wrong bone");
    List<String> strip = done("tray", "history", "K-102").lines().toList();
    assertEquals(3, strip.size(), String.join("\n", strip));
    assertTrue(strip.get(0).contains("why: the groove is open"), strip.get(0));
    assertTrue(strip.get(0).contains("taken back"), strip.get(0));
    assertTrue(strip.stream().anyMatch(l -> l.contains("element: left tibia, whole")));
    assertTrue(
        refused(
                "tray",
                "call",
                "K-103",
                "Ovis aries",
                "--by",
                "demo",
                "--basis",
                "eye",
                "--why",
                "x",
                "--trait",
                "no-such=yes")
            .contains("There is no trait"));
    assertTrue(refused("tray", "element", "K-103", "wing", "--by", "demo").contains("\"wing\""));
  }

  @Test
  void stoppedBoneShowsTheContactCardAndIsOpenedByRightOnly() {
    done("rules", "set", "contact-card", "Call the invented coroner, ext. 7", "--by", "demo");
    String out = done("tray", "stop", "K-101", "--by", "demo");
    assertTrue(out.contains("Take no picture") && out.contains("ext. 7"), out);
    assertTrue(
        refused("tray", "call", "K-101", "Ovis", "--by", "demo", "--basis", "eye")
            .contains("set aside as possibly human"));
    assertTrue(
        refused("tray", "open", "K-101", "--by", "demo", "--reason", "bear")
            .contains("has not the right open_stop"));
    done("rights", "give", "demo", "keeper", "--by", "demo");
    done("rights", "give", "demo", "open_stop", "--by", "demo");
    done("tray", "open", "K-101", "--by", "demo", "--reason", "bear, seen by Dr Invented");
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      assertEquals(
          TrayBone.Standing.OPEN,
          opened.trays().bone(new BoneId("K-101")).orElseThrow().standing());
    }
    assertTrue(done("daybook", "show", "--of", "stop").contains("bear, seen by Dr Invented"));
  }

  @Test
  void secondLookIsBlindAndTellsTheFirstCallAfterwards() {
    done("rules", "set", "second-look-every", "1", "--by", "demo");
    done(
        "tray",
        "call",
        "K-102",
        "Ovis cf. aries",
        "--by",
        "demo",
        "--basis",
        "eye",
        "--why",
        "groove");
    String list = done("second-look", "list", "--by", "ben");
    assertTrue(list.contains("K-102"), list);
    assertFalse(list.contains("Ovis"), list);
    assertEquals("", done("second-look", "list", "--by", "demo"));
    String told =
        done("second-look", "record", "K-102", "Dama dama", "--by", "ben", "--basis", "eye");
    assertTrue(told.contains("The first call was Ovis cf. aries by demo: another name."), told);
    assertTrue(done("second-look", "agreement").contains("Dama dama and Ovis aries: 1 bone"));
    done("second-look", "resolve", "K-102", "Dama dama", "--by", "cat", "--basis", "both drawers");
    assertTrue(done("tray", "history", "K-102").contains("third person on call 1: Dama dama"));
  }

  @Test
  void progressSaysWhyThereIsNoForecastYet() {
    done("tray", "call", "K-102", "Dama dama", "--by", "demo", "--basis", "eye");
    assertTrue(
        done("tray", "progress", "--lot", "Harrowmere easy")
            .contains("12 bones, 1 called, 11 left; no forecast: A forecast needs 5 working days"));
  }

  @Test
  void scrapIsCountedAndNamesAreBlanked() {
    assertTrue(
        done("tray", "scrap", "harrowmere-easy", "40", "--grams", "12.5", "--by", "demo")
            .contains("40 pieces"));
    assertTrue(done("tray", "list").contains("40 pieces of scrap"));
    assertTrue(
        refused("tray", "scrap", "harrowmere-easy", "0", "--by", "demo").contains("one piece"));
    done("people", "blank", "demo");
    assertTrue(done("people", "list").contains("demo: -"));
    assertTrue(done("daybook", "verify").startsWith("The Day Book holds"));
  }
}
