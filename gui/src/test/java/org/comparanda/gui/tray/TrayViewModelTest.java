package org.comparanda.gui.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.daybook.Change;
import org.comparanda.gui.text.Words;
import org.comparanda.house.Grant;
import org.comparanda.house.Right;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.oldcards.OldCard;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tables.TraitTable;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Grounds;
import org.comparanda.tray.Search;
import org.comparanda.tray.TraitAnswer;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Tray without a window, on a real file. All rows are invented. */
class TrayViewModelTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final TrayId A = new TrayId("T-a");
  private static final TrayId B = new TrayId("T-b");

  @TempDir Path folder;
  private Collection collection = null;
  private TrayViewModel model = null;

  @BeforeEach
  void twoTrays() {
    Clock clock = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
    collection = Collection.create(folder.resolve("c.comparanda"), clock);
    collection.people().save(new Person(new PersonId("ann"), "Invented Ann"));
    collection.trays().save(tray(A, "Lot 1", "arsenic"));
    collection.trays().save(tray(B, "Lot 2", ""));
    collection.trays().saveAll(List.of(bone("B-1"), bone("B-2"), bone("B-3")));
    TrayRoom room =
        new TrayRoom(
            collection.trays(),
            person -> collection.by(person).trays(),
            collection.lots(),
            person -> collection.by(person).lots(),
            collection.scraps(),
            collection.stops(),
            collection.houseRules(),
            collection.search(asked -> List.of()),
            person -> collection.by(person).numbering(),
            () -> collection.grants().rights(),
            collection.people(),
            collection.readings(),
            TABLES.protocol(),
            TABLES::taxa,
            () -> TraitTable.shipped(Locale.ENGLISH, TABLES.protocol(), TABLES.taxa()),
            (tray, bone, called) ->
                new Beside(List.of(new TaxonName("Ovis aries")), List.of(), Optional.empty()),
            lot -> List.of("counts of " + lot),
            Words.of("tray", Locale.ENGLISH),
            Locale.ENGLISH,
            clock);
    model = new TrayViewModel(room, Runnable::run, Runnable::run);
    model.refresh();
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private static Tray tray(TrayId id, String lot, String hazards) {
    return new Tray(
        id, lot, "Tray " + id.value(), BoneAge.RECENT, "pit 4", hazards, Tray.State.WAITING);
  }

  private static TrayBone bone(String number) {
    return new TrayBone(
        new BoneId(number),
        A,
        Optional.empty(),
        new ElementKey("radius"),
        Side.LEFT,
        Portion.WHOLE,
        BoneState.notRecorded(),
        TrayBone.Standing.OPEN,
        "");
  }

  private void open(String number) {
    model.openTray(A);
    model.choose(Optional.of(new BoneId(number)));
  }

  @Test
  void aKeeperSetsTheRuleOfBoneNumbersAndNobodyElse() {
    model.openTray(A);
    String before = model.openProperty().get().orElseThrow().next().value();
    assertEquals("B-2026-0001", before);
    model.changes().numberRule("H-{number:3}");
    assertTrue(said().contains("has not the right keeper"), said());
    PersonId ann = model.personProperty().get().id();
    collection
        .grants()
        .append(new Grant(0, ann, Right.KEEPER, Grant.Kind.GIVEN, ann, Instant.EPOCH, "first"));
    model.changes().numberRule("H-{numbr:3}");
    assertTrue(said().startsWith("\"H-{numbr:3}\" must hold {number} once"), said());
    model.changes().numberRule("H-{number:3}");
    assertEquals(
        "Bones of Tray T-a are numbered by H-{number:3} from now on; the next is H-001.", said());
    assertEquals("H-001", model.openProperty().get().orElseThrow().next().value());
  }

  private String said() {
    return model.messageProperty().get();
  }

  @Test
  void lotsAndTraysAreListedAndTheFirstPersonSitsHere() {
    assertEquals(List.of("Lot 1", "Lot 2"), model.lots().stream().map(LotLine::lot).toList());
    assertEquals("0 of 3 called", model.lots().get(0).count());
    assertEquals("no forecast: 0 of 5 working days", model.lots().get(0).forecast());
    assertEquals(new PersonId("ann"), model.personProperty().get().id());
  }

  @Test
  void hazardsStandBeforeTheFirstBoneUntilTheyWereRead() {
    model.openTray(A);
    assertTrue(model.hazardsFirst());
    model.hazardsRead();
    assertFalse(model.hazardsFirst());
    model.openTray(B);
    assertFalse(model.hazardsFirst());
  }

  @Test
  void wantedTrayMovesUpAndTheDayBookSaysWho() {
    model.openTray(B);
    model.changes().priority(1, "", "");
    assertTrue(said().contains("needs a reason"), said());
    model.changes().priority(1, "loan ends", "a visitor");
    assertEquals(B, model.trays().get(0).tray().id());
    Change last =
        collection.dayBook().entries().stream()
            .filter(e -> e.subject().equals("tray T-b"))
            .map(e -> Change.read(e.content()))
            .reduce((earlier, later) -> later)
            .orElseThrow();
    assertEquals("ann", last.by());
  }

  @Test
  void callAgainstTheNumbersAsksForALineOfWhyAndKeepsWhatWasTyped() {
    open("B-1");
    BoneViewModel bone = model.bone();
    bone.form().nameProperty().set("cf. Capra hircus");
    bone.form().answer(bone.form().traits().get(0), Optional.of(TraitAnswer.Seen.NO));
    bone.record();
    assertTrue(said().contains("goes against what the numbers say"), said());
    assertEquals("cf. Capra hircus", bone.form().nameProperty().get());
    bone.form().whyProperty().set("the bump is weak");
    bone.record();
    assertEquals("B-1 called cf. Capra hircus by Invented Ann.", said());
    assertEquals("", bone.form().nameProperty().get());
    Grounds kept = collection.trays().callsOn(new BoneId("B-1")).get(0).grounds();
    assertEquals(Grounds.How.BY_EYE, kept.how());
    assertEquals(
        List.of(new TraitAnswer("sheep-goat-radius-bump", TraitAnswer.Seen.NO)), kept.traits());
    assertEquals(1, bone.history().size());
  }

  @Test
  void whatIsNoNameIsSaidAndNothingRecorded() {
    open("B-1");
    model.bone().form().nameProperty().set(" ");
    model.bone().record();
    assertTrue(said().startsWith("That is no name"), said());
    assertEquals(List.of(), collection.trays().callsOn(new BoneId("B-1")));
  }

  @Test
  void chosenBonesMoveTogether() {
    model.openTray(A);
    List<BoneId> two = List.of(new BoneId("B-1"), new BoneId("B-2"));
    model.changes().move(two, Optional.empty(), Optional.empty(), Optional.empty());
    assertTrue(said().contains("say where to"), said());
    model.changes().move(two, Optional.of(B), Optional.of("box 7"), Optional.empty());
    assertEquals(2, collection.trays().bonesOf(B).size());
    assertEquals("box 7", collection.trays().bonesOf(B).get(0).keeping().goesTo());
  }

  @Test
  void scrapIsCountedAndWhatCantBeReadIsSaid() {
    model.openTray(A);
    model.changes().scrap("many", "");
    assertTrue(said().startsWith("Scrap is a whole number"), said());
    model.changes().scrap("40", "12,5");
    assertEquals(40, model.openProperty().get().orElseThrow().line().pieces());
  }

  @Test
  void boneOfAnyElementIsCalledByEye() {
    open("B-1");
    model.bone().recordElement(new ElementKey("atlas"), Side.AXIAL, Portion.WHOLE);
    assertTrue(model.bone().shownProperty().get().orElseThrow().what().startsWith("atlas"));
  }

  @Test
  void stopLocksTheBoneAndShowsTheContactCard() {
    open("B-1");
    model.bone().stop();
    assertTrue(said().contains("Take no picture") && said().contains("House Rules"), said());
    assertEquals(
        TrayBone.Standing.STOPPED,
        collection.trays().bone(new BoneId("B-1")).orElseThrow().standing());
  }

  @Test
  void hitOpensTheTrayAndTheBone() {
    model.searchFor("b-2");
    Search.Hit hit = model.hits().get(0);
    assertEquals(Search.Opens.BONE, hit.opens());
    model.openHit(hit);
    assertEquals(new BoneId("B-2"), model.bone().shownProperty().get().orElseThrow().bone().id());
    model.searchFor("");
    assertEquals(List.of(), List.copyOf(model.hits()));
  }

  @Test
  void hitOfAnotherScreenIsHandedOn() {
    List<Search.Hit> handed = new ArrayList<>();
    model.setElsewhere(handed::add);
    collection.oldCards().add(List.of(new OldCard(0, "list", 1, "Schaf, Kiste 9")));
    model.searchFor("kiste");
    model.openHit(model.hits().get(0));
    assertEquals("1", handed.get(0).key());
    assertEquals(Search.Opens.OLD_CARD, handed.get(0).opens());
    model.searchFor("invented ann");
    model.openHit(model.hits().get(0));
    assertTrue(said().startsWith("Invented Ann: what this person"), said());
  }
}
