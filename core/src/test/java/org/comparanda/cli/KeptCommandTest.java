package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.comparanda.exchange.json.KeptAnswerText;
import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import org.comparanda.suggestion.AnswerFigures;
import org.comparanda.tray.KeptAnswer;
import org.comparanda.tray.TrayBone;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Answers kept in the simulated Harrowmere collection and reckoned again. */
class KeptCommandTest {
  @TempDir Path folder;
  private Path collection = Path.of("");
  private Path two = Path.of("");

  /** The first two bones of the easy tray. */
  @BeforeEach
  void make() throws IOException {
    collection = Room.harrowmere(folder);
    List<String> easy = Files.readAllLines(Path.of("..", "demo-data", "tray-easy.csv"));
    two = Files.write(folder.resolve("two.csv"), easy.subList(0, 3));
  }

  private Typed keep() {
    return Typed.command("suggest", two, "--collection", collection, "--keep");
  }

  private Typed check() {
    return Typed.command("kept", "check", "--collection", collection);
  }

  private List<KeptAnswer> kept(String bone) {
    try (Collection opened = Collection.open(collection, Typed.CLOCK)) {
      return opened.keptAnswers().of(new BoneId(bone));
    }
  }

  private static AnswerFigures figures(KeptAnswer answer) {
    return KeptAnswerText.read(answer.content()).value().orElseThrow().figures();
  }

  // Equal texts: every double is written with all its digits, so equal texts are equal bits.
  @Test
  void theSameShelfAndProgramGiveTheSameDigitsAgain() {
    assertEquals(0, keep().code());
    Typed again = keep();
    assertTrue(again.err().contains("Kept 2 answers in "), again.err());
    List<KeptAnswer> both = kept("K-101");
    assertEquals(2, both.size());
    assertEquals(both.get(0).content(), both.get(1).content());
    Typed checked = check();
    assertEquals(0, checked.code(), checked.out() + checked.err());
    assertEquals(4, checked.out().lines().count());
    assertTrue(
        checked.out().lines().allMatch(l -> l.endsWith(": the same to the last digit.")),
        checked.out());
  }

  @Test
  void readingsRulesAndAnimalsComeBackAsTheyWereKept() {
    Typed.command(
        "suggest",
        two,
        "--collection",
        collection,
        "--keep",
        "--priors",
        "shelf",
        "--set-aside",
        "Bos taurus=none before 1800");
    KeptAnswerText text = KeptAnswerText.read(kept("K-101").get(0).content()).value().orElseThrow();
    assertEquals("shelf", text.rules().priors().name());
    assertEquals("none before 1800", text.rules().setAside().get(0).reason());
    assertEquals("K-101", text.bone().id());
    assertEquals(0, check().code());
    AnswerFigures figures = text.figures();
    assertEquals(
        figures.animals().size(), figures.taxa().stream().mapToInt(t -> t.animals()).sum());
  }

  @Test
  void anAnimalMoreOnTheShelfIsNamedWithWhatItChanges() throws IOException {
    keep();
    AnswerFigures before = figures(kept("K-101").get(0));
    Path more =
        Files.writeString(
            folder.resolve("more.csv"),
            """
            animal,taxon,element,side,portion,GL [mm],GLC [mm],SD [mm],Bd [mm],BT [mm],HTC [mm]
            HB-9999,Ovis aries,humerus,left,whole,150,139,16.1,33.0,31.1,15.2
            """);
    Typed added = Typed.command("shelf", "add", more, "--collection", collection);
    assertEquals(0, added.code(), added.err());
    Typed checked = Typed.command("kept", "check", "--collection", collection, "--bone", "K-101");
    assertEquals(1, checked.code());
    assertTrue(checked.out().contains("The shelf has changed, from "), checked.out());
    assertTrue(checked.out().contains("1 animal came into the fit: HB-9999."), checked.out());
    int sheep =
        before.taxa().stream()
            .filter(t -> t.taxon().value().equals("Ovis aries"))
            .findFirst()
            .orElseThrow()
            .animals();
    assertTrue(
        checked.out().contains("animals were " + sheep + " and are " + (sheep + 1)), checked.out());
  }

  @Test
  void answersAreReckonedAgainWithTheHousesOwnTaxa() {
    Typed moved =
        Typed.command(
            "taxa",
            "move",
            "Ovis aries",
            "--under",
            "Cervidae",
            "--by",
            "p1",
            "--why",
            "house",
            "--collection",
            collection);
    assertEquals(0, moved.code(), moved.err());
    Path hard = Path.of("..", "demo-data", "tray-hard.csv");
    Typed kept = Typed.command("suggest", hard, "--collection", collection, "--keep");
    assertEquals(0, kept.code(), kept.err());
    Typed checked = check();
    assertEquals(0, checked.code(), checked.out());
  }

  @Test
  void theJsonSaysTheSame() throws IOException {
    keep();
    Path json = folder.resolve("kept.json");
    assertEquals(
        0, Typed.command("kept", "check", "--collection", collection, "--json", json).code());
    JsonNode first = new ObjectMapper().readTree(json.toFile()).get("answers").get(0);
    assertEquals("K-101", first.get("bone").asText());
    assertTrue(first.get("same").asBoolean());
    assertEquals(0, first.get("changes").size());
    assertTrue(
        Typed.command("kept", "list", "--collection", collection).out().contains("bone K-101, "));
  }

  @Test
  void aBoneThatMayBeHumanLosesItsAnswersAndGetsNone() {
    keep();
    assertEquals(1, kept("K-102").size());
    try (Collection opened = Collection.open(collection, Typed.CLOCK)) {
      TrayBone bone = opened.trays().bone(new BoneId("K-102")).orElseThrow();
      opened.trays().save(Room.stopped(bone));
    }
    assertEquals(List.of(), kept("K-102"));
    Typed refused = keep();
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("\"K-102\" is set aside as possibly human"), refused.err());
    assertEquals(1, kept("K-101").size(), "all or none");
  }

  @Test
  void keepingNeedsACollection() {
    Typed refused =
        Typed.command("suggest", two, "--shelf", Path.of("..", "demo-data", "shelf.csv"), "--keep");
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("--keep needs --collection FILE"), refused.err());
  }
}
