package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneAge;
import org.comparanda.daybook.DayBookFilter;
import org.comparanda.daybook.DayBookPage;
import org.comparanda.daybook.Verdict;
import org.comparanda.house.HouseRule;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.tray.Lot;
import org.comparanda.tray.NumberRule;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Day Book page by page. All rows are invented. */
class DayBookPagesTest {
  private static final Instant NOW = Instant.parse("2026-11-25T10:15:30Z");
  private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
  private static final PersonId ANN = new PersonId("ann");
  private static final PersonId BEN = new PersonId("ben");

  @TempDir Path folder;
  private Path file;
  private Collection collection;

  @BeforeEach
  void someEntries() {
    file = folder.resolve("c.comparanda");
    collection = Collection.create(file, CLOCK);
    collection.people().save(new Person(ANN, "Invented Ann"));
    collection.people().save(new Person(BEN, "Invented Ben"));
    collection
        .houseRules()
        .set(new HouseRule(RuleName.SECOND_LOOK_EVERY, "4", ANN, NOW, "more to be seen"));
    collection.by(BEN).lots().save(Lot.named("Lot 7"));
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private List<String> subjects(DayBookFilter filter) {
    return collection.dayBookPages().page(filter, 0, 100).lines().stream()
        .map(line -> line.entry().subject())
        .toList();
  }

  @Test
  void newestStandsFirstWithoutTheEntriesThatJoin() {
    collection.dayBookHead();
    assertEquals(
        List.of("lot Lot 7", "rule 1", "person ben", "person ann"), subjects(DayBookFilter.all()));
  }

  @Test
  void pageKnowsHowManyThereAre() {
    DayBookPage page = collection.dayBookPages().page(DayBookFilter.all(), 1, 2);
    assertEquals(4, page.all());
    assertEquals(
        List.of("rule 1", "person ben"),
        page.lines().stream().map(line -> line.entry().subject()).toList());
  }

  @Test
  void personIsThatOfTheEntryOrOfItsRow() {
    assertEquals(List.of("rule 1"), subjects(DayBookFilter.all().withPerson("ann")));
    assertEquals(List.of("lot Lot 7"), subjects(DayBookFilter.all().withPerson("ben")));
    assertEquals(List.of(), subjects(DayBookFilter.all().withPerson("a%")));
    assertEquals(
        List.of("", "second-look-every: 4", "named", "named"),
        collection.dayBookPages().page(DayBookFilter.all(), 0, 9).lines().stream()
            .map(DayBookPage.Line::words)
            .toList());
    assertEquals(
        List.of("ben", "ann", "", ""),
        collection.dayBookPages().page(DayBookFilter.all(), 0, 9).lines().stream()
            .map(DayBookPage.Line::by)
            .toList());
  }

  @Test
  void kindIsAWholeWord() {
    TrayId tray = new TrayId("T-1");
    collection
        .trays()
        .save(new Tray(tray, "Lot 7", "Pit 4", BoneAge.RECENT, "", "", Tray.State.WAITING));
    collection.numbering().setRule(tray, new NumberRule("K-{number}"));
    assertEquals(List.of("number rule T-1"), subjects(DayBookFilter.all().withKind("number rule")));
    assertEquals(List.of(), subjects(DayBookFilter.all().withKind("number")));
    assertTrue(collection.dayBookPages().kinds().contains("number rule"));
  }

  @Test
  void textIsLookedForInSubjectAndWordsNotInFingerprints() {
    assertEquals(List.of("rule 1"), subjects(DayBookFilter.all().withText("SECOND-look")));
    assertEquals(List.of("lot Lot 7"), subjects(DayBookFilter.all().withText("lot 7")));
    assertEquals(List.of("rule 1"), subjects(DayBookFilter.all().withText("every: 4")));
    String print =
        collection.dayBookPages().page(DayBookFilter.all(), 0, 1).lines().get(0).entry().content();
    assertEquals(List.of(), subjects(DayBookFilter.all().withText(print.substring(0, 12))));
  }

  @Test
  void blankedPersonIsToldFromOneNeverNamed() {
    collection.people().save(new Person(new PersonId("cat"), ""));
    collection.people().save(new Person(BEN, ""));
    assertEquals(Set.of("ben"), collection.dayBookPages().blanked());
    assertEquals(
        List.of("id"), List.copyOf(collection.dayBookPages().rowNow("person ben").keySet()));
  }

  @Test
  void rowIsShownAsItIsNow() {
    assertEquals("4", collection.dayBookPages().rowNow("rule 1").get("content"));
    assertTrue(collection.dayBookPages().rowNow("rule 9").isEmpty());
    assertTrue(collection.dayBookPages().rowNow("all benches").isEmpty());
  }

  @Test
  void verifyingSaysHowFarItIsAndWhatHappened() throws Exception {
    List<Double> parts = new ArrayList<>();
    String head = collection.dayBookHead();
    assertInstanceOf(Verdict.Sound.class, collection.verifyDayBook(Optional.of(head), parts::add));
    assertEquals(0.0, parts.get(0));
    assertEquals(1.0, parts.get(parts.size() - 1));
    assertEquals(parts.stream().sorted().toList(), parts);
    collection.close();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.executeUpdate("update lot set places = 'NEVER_OUT'");
    }
    collection = Collection.open(file, CLOCK);
    assertEquals(
        new Verdict.Broken(Verdict.Damage.ROW_CHANGED, List.of("lot Lot 7")),
        collection.verifyDayBook());
    assertEquals(
        Verdict.Damage.HEAD_UNKNOWN,
        assertInstanceOf(Verdict.Broken.class, collection.verifyDayBook("0".repeat(64))).damage());
  }
}
