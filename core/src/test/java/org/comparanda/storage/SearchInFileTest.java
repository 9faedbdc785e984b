package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.check.AcceptedFinding;
import org.comparanda.check.FindingKind;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.oldcards.CardDecision;
import org.comparanda.oldcards.OldCard;
import org.comparanda.pile.Arrival;
import org.comparanda.pile.Interest;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.ChangeNote;
import org.comparanda.register.Restriction;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;
import org.comparanda.tray.ElementCall;
import org.comparanda.tray.Lot;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.Refit;
import org.comparanda.tray.Scrap;
import org.comparanda.tray.Search;
import org.comparanda.tray.SpokenNames;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything is found by its words, and the index stays true. All rows are invented. */
class SearchInFileTest {
  private static final Instant NOW = Instant.parse("2026-11-25T10:15:30Z");
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final PersonId ANN = new PersonId("p-7");
  private static final BoneId ONE = new BoneId("HM-1");
  private static final BoneId TWO = new BoneId("HM-2");

  @TempDir Path folder;
  private Collection room = null;

  @BeforeEach
  void fillEveryPart() {
    room = Collection.create(folder.resolve("c.comparanda"), Clock.fixed(NOW, ZoneOffset.UTC));
    room.people().save(new Person(ANN, "Anna Überweg"));
    room.animals().add(List.of(RepositoryContractTest.FULL).iterator(), "cards", n -> true);
    room.trays().save(RepositoryContractTest.tray("T-a", Tray.State.WAITING));
    room.trays().save(bone(ONE).withRemarks("odd Groove, 100% worn_down"));
    room.trays().save(bone(TWO));
    room.trays().record(call(TWO, "Capra hircus"));
    room.trays()
        .record(
            new ElementCall(
                0, TWO, new ElementKey("radius"), Side.LEFT, Portion.WHOLE, ANN, NOW, "shape"));
    room.readings().append(take(ONE, "humerus", "Bd", "32.1 mm", 32.1, "at the ridge"));
    room.readings().append(take(ONE, "humerus", "GL", "1.5 in", 38.1, ""));
    room.associations().join(ONE, TWO);
    room.refits().save(new Refit(ONE, List.of(Portion.SHAFT, Portion.DISTAL), Set.of()));
    room.scraps()
        .append(
            new Scrap(
                0, new TrayId("T-a"), 41, Optional.of(12.5), ANN, NOW, "mostly turtle plates"));
    room.lots()
        .save(
            Lot.named("lot")
                .withPlaces(Lot.Places.GO_OUT)
                .withRemarks("spoil heap of the old quarry"));
    room.acceptedFindings()
        .accept(
            new AcceptedFinding(
                FindingKind.OUTLIER,
                Optional.of("A-2"),
                Optional.of("humerus"),
                Optional.of("Bd"),
                Optional.of("1"),
                Optional.empty(),
                "a giant, seen twice",
                Optional.empty(),
                NOW));
    room.oldCards().add(List.of(new OldCard(0, "drawer list", 3, "Schaf, Oberarm li., Kiste 9")));
    room.oldCards().refuse(new CardDecision(1, CardDecision.Kind.REFUSED, ANN, NOW, "box is lost"));
    room.pile()
        .save(
            new Arrival(
                "P-4",
                new TaxonName("Lutra lutra"),
                "road kill",
                LocalDate.of(2026, 5, 1),
                "a ranger",
                Arrival.Stage.FROZEN,
                "freezer 2",
                "permit 77",
                "tail missing"));
    room.pile().add(new Interest("P-4", ANN, "otters of the delta", NOW));
  }

  @AfterEach
  void indexSaysWhatTheRowsSay() throws Exception {
    try (Database database = new Database(room.file())) {
      database.write(
          h -> {
            List<String> views =
                h.createQuery("select name from sqlite_master where type = 'view'")
                    .mapTo(String.class)
                    .list();
            // by hand: the parts in the file, one view each
            assertEquals(20, views.size());
            Map<String, Integer> said = new TreeMap<>();
            for (String view : views) {
              h.createQuery("select part, renewed_by, opens, hit_key, who, content from " + view)
                  .mapToMap()
                  .forEach(row -> said.merge(new TreeMap<>(row).toString(), 1, Integer::sum));
            }
            Map<String, Integer> kept = new TreeMap<>();
            h.createQuery("select part, renewed_by, opens, hit_key, who, content from search_text")
                .mapToMap()
                .forEach(row -> kept.merge(new TreeMap<>(row).toString(), 1, Integer::sum));
            assertEquals(said, kept);
            // SQLite's own check of an index against its rows: an error where they differ
            return h.execute(
                "insert into search_index (search_index, rank) values ('integrity-check', 1)");
          });
    }
    room.close();
  }

  private static TrayBone bone(BoneId id) {
    return RepositoryContractTest.bone(id.value(), TrayBone.Standing.OPEN);
  }

  private static Call call(BoneId bone, String taxon) {
    return new Call(0, bone, new TaxonName(taxon), Qualifier.CF, ANN, NOW, "horn core kept", false);
  }

  private static Reading take(
      BoneId bone, String element, String code, String typed, double mm, String why) {
    return new Reading(
        0,
        bone,
        new ElementKey(element),
        new MeasurementCode(code),
        Reading.Kind.TAKE,
        typed,
        Optional.of(new Length(mm)),
        ANN,
        NOW,
        1,
        false,
        Optional.of("caliper 4"),
        Optional.empty(),
        why);
  }

  private List<Search.Hit> hits(String words) {
    return room.search(
            new SpokenNames(
                TABLES.protocol().elements(),
                room.names().all().on(TABLES.taxa()).value().orElseThrow()))
        .find(words, 60);
  }

  private List<String> found(String words) {
    return hits(words).stream().map(hit -> hit.kind() + " " + hit.key()).toList();
  }

  @Test
  void everyPartOfTheRecordIsFoundByItsWords() {
    assertEquals(List.of("BONE HM-1"), found("groove"));
    assertEquals(List.of("BONE HM-1"), found("in pieces"));
    assertEquals(List.of("CALL HM-2"), found("capra cf"));
    assertEquals(List.of("CALL HM-2"), found("horn core kept"));
    assertEquals(List.of("CALL HM-2"), found("said shape"));
    assertEquals(List.of("READING HM-1"), found("ridge"));
    assertEquals(List.of("READING HM-1"), found("humerus Bd 32.1"));
    assertEquals(List.of("READING HM-1"), found("1.5 in"));
    assertEquals(List.of("READING HM-1"), found("GL 38,1"));
    assertEquals(List.of("TOGETHER HM-1", "TOGETHER HM-2"), found("found together"));
    assertEquals(List.of("TRAY T-a"), found("arsenic"));
    assertEquals(List.of("SCRAP T-a"), found("turtle"));
    assertEquals(List.of("LOT lot"), found("quarry"));
    assertEquals(List.of("ANIMAL A-2"), found("cabinet 3 captive"));
    assertEquals(List.of("ANIMAL A-2"), found("1234.5"));
    assertEquals(List.of("SHELF_READING A-2"), found("ovis bd 31.25"));
    assertEquals(List.of("FINDING A-2"), found("giant"));
    assertEquals(List.of("PERSON p-7"), people("anna"));
    assertEquals(List.of("OLD_CARD 1"), found("Kiste 9"));
    assertEquals(List.of("OLD_CARD 1"), found("lost"));
    assertEquals(List.of("ARRIVAL P-4"), found("ranger"));
    assertEquals(List.of("ARRIVAL P-4"), found("otters delta"));
  }

  private List<String> people(String words) {
    return hits(words).stream()
        .filter(hit -> hit.kind() == Search.Kind.PERSON)
        .map(hit -> hit.kind() + " " + hit.key())
        .toList();
  }

  @Test
  void wordsMayBeBegunAndTakeNoNoticeOfCaseAndAccents() {
    assertEquals(List.of("BONE HM-1"), found("GROO hm-1"));
    assertEquals(List.of("BONE HM-1"), found("100% worn_d"));
    assertEquals(List.of("PERSON p-7"), people("uberweg"));
    assertEquals(List.of("PERSON p-7"), people("ÜBER"));
    assertEquals(List.of(), found("groove capra"));
  }

  @Test
  void wordsBetweenQuotationMarksStandSideBySide() {
    assertEquals(List.of("BONE HM-1"), found("\"odd groove\""));
    assertEquals(List.of(), found("\"groove odd\""));
    assertEquals(List.of(), found("\"odd groo\""));
    assertEquals(List.of("BONE HM-1"), found("\"odd groo"));
    assertEquals(List.of("BONE HM-1"), found("„odd groove“"));
  }

  @Test
  void elementsSidesAndTaxaAreFoundByTheirOtherNames() {
    assertEquals(List.of("READING HM-1"), found("Oberarm Bd 32.1"));
    assertEquals(List.of("CALL HM-2"), found("linke speiche shape"));
    assertEquals(List.of("CALL HM-2"), found("goat kept"));
    room.names()
        .rename(
            new TaxonName("Capra hircus"),
            new TaxonName("Capra nova"),
            TABLES.taxa(),
            new ChangeNote(ANN, "invented"));
    assertEquals(List.of("CALL HM-2"), found("nova kept"));
    assertTrue(found("\"capra hircus\"").contains("NAME Capra hircus"));
  }

  @Test
  void whatAPersonDidIsFoundByTheirNameUntilItIsBlanked() {
    assertEquals(List.of("READING HM-1"), found("anna ridge"));
    assertTrue(hits("ridge").get(0).text().endsWith("Anna Überweg"), hits("ridge").toString());
    room.people().save(new Person(ANN, ""));
    assertEquals(List.of(), found("anna"));
    assertEquals(List.of("READING HM-1"), found("p-7 ridge"));
  }

  @Test
  void changesAreFollowed() {
    room.trays().save(bone(ONE).withRemarks("plain"));
    assertEquals(List.of(), found("groove"));
    assertEquals(List.of("BONE HM-1"), found("plain"));
    Tray tray = room.trays().all().get(0);
    room.trays()
        .save(new Tray(tray.id(), "cellar", "name", tray.age(), "", "lead dust", Tray.State.DONE));
    assertEquals(List.of("BONE HM-1", "BONE HM-2", "TRAY T-a"), found("cellar"));
    assertEquals(List.of(), found("arsenic"));
    room.trays()
        .record(
            new ElementCall(
                0, ONE, new ElementKey("tibia"), Side.RIGHT, Portion.DISTAL, ANN, NOW, "seen"));
    assertEquals(List.of("READING HM-1"), found("right ridge"));
    room.associations().part(TWO);
    assertEquals(List.of(), found("found together"));
    AnimalCard card = room.register().card(new AnimalId("A-2")).orElseThrow();
    room.register()
        .change(
            card,
            new AnimalCard(
                card.animal().withRemarks("limps"),
                "House of Reeds",
                card.length(),
                card.mass(),
                new Restriction(
                    "permit 9", "stays", Restriction.Export.FORBIDDEN, Optional.empty()),
                card.standing()),
            new ChangeNote(ANN, "card found"));
    assertEquals(List.of("ANIMAL A-2"), found("limps reeds \"permit 9\""));
    room.register().retire(new AnimalId("A-2"), new ChangeNote(ANN, "mouldy"));
    assertEquals(List.of("ANIMAL A-2"), found("limps retired"));
  }

  @Test
  void everyPartGetsItsShare() {
    assertEquals(
        List.of(
            "BONE HM-1", "BONE HM-2", "CALL HM-2", "CALL HM-2", "READING HM-1", "TOGETHER HM-1"),
        room.search(asked -> List.of()).find("hm", 6).stream()
            .map(hit -> hit.kind() + " " + hit.key())
            .toList());
  }

  @Test
  void whateverIsTypedIsNoError() {
    assertEquals(List.of(), found(" "));
    assertEquals(List.of(), found("\" \" * - ^ ( ) : %"));
    assertEquals(List.of("BONE HM-1"), found("groove* odd( worn^ down:"));
    String signs =
        "\"'*^:(){}[]-+~|\\%_.,;!?#&/<>=@$´`“”„«»\u0000\u0007\t\n AND OR NOT NEAR co ä骨😀";
    SplittableRandom random = new SplittableRandom(20417);
    for (int i = 0; i < 100; i++) {
      StringBuilder typed = new StringBuilder();
      for (int j = random.nextInt(30); j >= 0; j--) {
        typed.append(signs.charAt(random.nextInt(signs.length())));
      }
      assertTrue(found(typed.toString()).size() <= 60, typed.toString());
    }
    assertEquals(List.of(), found("longword ".repeat(5_000)));
  }

  @Test
  void partIsNoWordOfTheRecord() {
    assertEquals(List.of(), found("traybone"));
    assertEquals(List.of(), found("702D37")); // "p-7" in hexadecimal
  }
}
