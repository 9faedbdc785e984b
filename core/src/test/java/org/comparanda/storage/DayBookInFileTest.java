package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.comparanda.daybook.Verdict;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
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
      statement.execute("drop trigger day_book_never_changed");
      statement.execute("drop trigger day_book_never_removed");
      statement.execute("drop trigger reading_never_changed");
      statement.execute("drop trigger reading_never_removed");
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

  @Test
  void blankingANameLeavesItSound() {
    try (Collection collection = Collection.open(file, TODAY)) {
      collection.people().save(new Person(new PersonId("p1"), ""));
    }
    assertEquals(new Verdict.Sound(5), verdict());
  }
}
