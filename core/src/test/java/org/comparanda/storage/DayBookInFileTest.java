package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.check.AcceptedFinding;
import org.comparanda.check.FindingKind;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.Verdict;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tampering by someone who takes the triggers away and edits the file. */
class DayBookInFileTest {
  private static final Clock TODAY = at("2026-11-25T10:00:00Z");
  private static final Clock TOMORROW = at("2026-11-26T10:00:00Z");

  @TempDir Path folder;
  private Path file;
  private String head;

  private static Clock at(String instant) {
    return Clock.fixed(Instant.parse(instant), ZoneOffset.UTC);
  }

  @BeforeEach
  void write() {
    file = folder.resolve("c.comparanda");
    try (Collection collection = Collection.create(file, TODAY)) {
      collection.people().save(new Person(new PersonId("p1"), "Invented Ann"));
      collection.readings().append(CollectionFileTest.reading("30"));
      collection.atBench("bench 2").readings().append(CollectionFileTest.reading("31"));
      head = collection.dayBookHead();
    }
  }

  private void tamper(String sql) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      List<String> triggers = new ArrayList<>();
      try (ResultSet row =
          statement.executeQuery("select name from sqlite_master where type = 'trigger'")) {
        while (row.next()) {
          triggers.add(row.getString(1));
        }
      }
      for (String trigger : triggers) {
        statement.execute("drop trigger " + trigger);
      }
      assertNotEquals(0, statement.executeUpdate(sql));
    }
  }

  private Verdict verdict() {
    try (Collection collection = Collection.open(file, TODAY)) {
      return collection.verifyDayBook(head);
    }
  }

  @Test
  void everyChangeIsInItAndTheHeadHolds() {
    // by hand: a person, two readings, one joining entry
    assertEquals(new Verdict.Sound(4), verdict());
  }

  @Test
  void laterChangesLeaveAnEarlierHeadSound() {
    try (Collection collection = Collection.open(file, TODAY)) {
      assertEquals(head, collection.dayBookHead());
      collection.readings().append(CollectionFileTest.reading("32"));
      assertNotEquals(head, collection.dayBookHead());
      assertEquals(new Verdict.Sound(6), collection.verifyDayBook(head));
    }
  }

  @Test
  void firstChangeOfADayJoinsTheBenchesOfTheDayBefore() {
    try (Collection collection = Collection.open(file, TODAY)) {
      collection.readings().append(CollectionFileTest.reading("32"));
    }
    try (Collection collection = Collection.open(file, TOMORROW)) {
      collection.readings().append(CollectionFileTest.reading("33"));
      // by hand: four before, one reading, the joining of the new day, one reading
      assertEquals(new Verdict.Sound(7), collection.verifyDayBook());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "update day_book set content = 'x' where bench = 'bench 1' and number = 1",
        "update day_book set subject = 'reading 9' where bench = 'bench 2'",
        "delete from day_book where bench = 'bench 1' and number = 1",
        "delete from day_book where bench = 'bench 1' and number = 2",
        "delete from day_book where bench = 'day'",
        "delete from day_book",
        "update reading set length_mm = 31 where id = 1",
        "update reading set as_typed = '3O' where id = 2",
        "delete from reading where id = 2",
        "insert into reading select 9, bone_id, element, code, kind, as_typed, length_mm, person_id,"
            + " at, pass, is_repeat, instrument, points_at, reason from reading where id = 1",
      })
  void tamperingIsFound(String sql) throws Exception {
    tamper(sql);
    String sentence = assertInstanceOf(Verdict.Broken.class, verdict()).sentence();
    assertTrue(sentence.endsWith("."), sentence);
  }

  /** One row of every kind that had none yet, under a new head. */
  private void fillTheRest() {
    try (Collection collection = Collection.open(file, TODAY)) {
      collection.animals().add(List.of(RepositoryContractTest.FULL).iterator(), "cards", n -> true);
      collection.trays().save(RepositoryContractTest.tray("T-a", Tray.State.WAITING));
      collection.trays().save(RepositoryContractTest.bone("HM-1", TrayBone.Standing.OPEN));
      collection.trays().record(RepositoryContractTest.call("Ovis aries", Qualifier.CF));
      collection
          .acceptedFindings()
          .accept(
              new AcceptedFinding(
                  FindingKind.OUTLIER,
                  Optional.of("A-1"),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  "measured again",
                  Optional.empty(),
                  Instant.EPOCH));
      head = collection.dayBookHead();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "update animal set taxon = 'Capra hircus'",
        "update shelf_bone set side = 'RIGHT'",
        "update shelf_reading set reading_value = reading_value + 0.1",
        "delete from shelf_reading",
        "update shelf_change set origin = 'elsewhere'",
        "update tray set hazards = ''",
        "update tray set assigned_to = 'p2'",
        "update tray_bone set standing = 'STOPPED'",
        "update tray_bone set remarks = remarks || '.'",
        "update bone_call set taxon = 'Capra hircus'",
        "delete from bone_call",
        "update accepted_finding set reason = 'x'",
        "delete from accepted_finding",
        "update person set id = 'p9' where id not in (select person_id from reading)"
            + " and id not in (select person_id from bone_call)",
        "insert into lot (id, places, remarks) values ('lot', 'MAY_GO_OUT', '')",
      })
  void tamperingWithAnyKindOfRowIsFound(String sql) throws Exception {
    try (Collection collection = Collection.open(file, TODAY)) {
      collection.people().save(new Person(new PersonId("p2"), "Invented Ben"));
    }
    fillTheRest();
    assertInstanceOf(Verdict.Sound.class, verdict());
    tamper(sql);
    assertInstanceOf(Verdict.Broken.class, verdict());
  }

  @Test
  void bookRebuiltWholeIsFoundByTheHeadAlone() throws Exception {
    tamper("update reading set length_mm = 31, as_typed = '31' where id = 1");
    tamper("delete from day_book");
    try (Database forger = new Database(file)) { // writes every hash anew, as a forger would
      DayBookRows rows = new DayBookRows("bench 1", TODAY, Optional.empty());
      forger.write(
          h -> {
            rows.takeOver(h);
            return rows.head(h);
          });
    }
    try (Collection collection = Collection.open(file, TODAY)) {
      assertInstanceOf(Verdict.Sound.class, collection.verifyDayBook());
    }
    String sentence = assertInstanceOf(Verdict.Broken.class, verdict()).sentence();
    assertTrue(sentence.contains("is not in this Day Book"), sentence);
  }

  @Test
  void cutTailIsFoundByTheHead() throws Exception {
    tamper("delete from day_book where bench = 'day'");
    tamper("delete from day_book where bench = 'bench 2'");
    tamper("delete from reading where id = 2");
    try (Collection collection = Collection.open(file, TODAY)) {
      assertInstanceOf(Verdict.Sound.class, collection.verifyDayBook());
    }
    assertInstanceOf(Verdict.Broken.class, verdict());
  }

  @Test
  void everyTableIsKeptOrLeftOutForAReason() {
    Set<String> told = new TreeSet<>(Kept.LEFT_OUT.keySet());
    Kept.ALL.forEach(
        kept -> {
          told.add(kept.table());
          kept.parts().forEach(part -> told.add(part.table()));
        });
    Set<String> tables = new TreeSet<>();
    ContentHash.TABLES_AND_KEYS.forEach(t -> tables.add(t.substring(0, t.indexOf(' '))));
    assertEquals(tables, told);
  }

  @Test
  void everyTableOfTheFileIsCopiedAndHashed() {
    try (Database database = new Database(file)) {
      List<String> names =
          database.read(
              h ->
                  h.createQuery(
                          "select name from sqlite_master where type = 'table' and name not"
                              + " like 'flyway%' and name not like 'sqlite%' and name not like '"
                              + ContentHash.MADE_BY_THE_FILE
                              + "%'")
                      .mapTo(String.class)
                      .list());
      Set<String> inFile = new TreeSet<>(names);
      Set<String> listed = new TreeSet<>();
      ContentHash.TABLES_AND_KEYS.forEach(t -> listed.add(t.substring(0, t.indexOf(' '))));
      assertEquals(inFile, listed);
    } catch (java.sql.SQLException problem) {
      throw new AssertionError(problem);
    }
  }

  @Test
  void fileOfAnOlderFormIsTakenOverAndHolds() throws Exception {
    Path older = folder.resolve("older.comparanda");
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + older);
        Statement statement = connection.createStatement()) {
      Flyway.configure()
          .dataSource("jdbc:sqlite:" + older, "", "")
          .locations(
              "classpath:org/comparanda/storage/schema", "classpath:org/comparanda/storage/sqlite")
          .target("6")
          .load()
          .migrate();
      statement.execute("insert into person (id, name) values ('p1', 'Invented Ann')");
      statement.execute(
          "insert into tray values ('T-1', 1, 'lot', 'name', 'RECENT', '', '', 'WAITING')");
      statement.execute("pragma application_id = " + Schema.APPLICATION_ID);
      statement.execute("pragma user_version = 6");
    }
    try (Collection collection = Collection.open(older, TODAY)) {
      // by hand: one person, one tray
      assertEquals(new Verdict.Sound(2), collection.verifyDayBook());
    }
  }

  @Test
  void changeSaysWhoseItIs() {
    try (Collection collection = Collection.open(file, TODAY)) {
      collection
          .by(new PersonId("p1"))
          .trays()
          .save(RepositoryContractTest.tray("T-a", Tray.State.DONE));
      assertEquals(
          List.of("p1"),
          collection.dayBook().entries().stream()
              .filter(e -> e.subject().equals("tray T-a"))
              .map(e -> Change.read(e.content()).by())
              .toList());
    }
  }

  @Test
  void blankingANameLeavesItSound() {
    try (Collection collection = Collection.open(file, TODAY)) {
      collection.people().save(new Person(new PersonId("p1"), ""));
      assertTrue(
          collection.dayBook().entries().stream().noneMatch(e -> e.toString().contains("Ann")));
    }
    assertEquals(new Verdict.Sound(5), verdict());
  }
}
