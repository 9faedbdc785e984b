package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.comparanda.daybook.DayBook;
import org.comparanda.daybook.Verdict;
import org.comparanda.tray.Tray;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Benches whose clocks disagree: the joining entries tell whose word came later. */
class DayBookClocksTest {
  private static final Clock TODAY =
      Clock.fixed(Instant.parse("2026-11-25T10:15:30Z"), ZoneOffset.UTC);
  private static final Clock YESTERDAY = Clock.offset(TODAY, Duration.ofDays(-1));

  @TempDir Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void northWritesAndThenSouthWhoseClockIsSetBack() {
    file = folder.resolve("c.comparanda");
    try (Collection north = Collection.create(file, TODAY)) {
      save(north, "north", Tray.State.DONE);
    }
    try (Collection south = Collection.open(file, YESTERDAY)) {
      save(south, "south", Tray.State.SECOND_LOOK);
    }
  }

  private static void save(Collection room, String bench, Tray.State state) {
    room.atBench(bench).trays().save(RepositoryContractTest.tray("T-a", state));
  }

  private Verdict verdict() {
    try (Collection room = Collection.open(file, TODAY)) {
      return room.verifyDayBook();
    }
  }

  @Test
  void clockSetBackConfusesNothing() {
    assertInstanceOf(Verdict.Sound.class, verdict());
    try (Collection room = Collection.open(file, YESTERDAY)) {
      save(room, "north", Tray.State.WAITING);
      save(room, "south", Tray.State.DONE);
      save(room, "south", Tray.State.WAITING);
      save(room, "north", Tray.State.SET_ASIDE);
      assertInstanceOf(Verdict.Sound.class, room.verifyDayBook(room.dayBookHead()));
    }
  }

  @Test
  void wordOfTheBenchWithTheLaterClockPutBackIsFound() throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute("update tray set state = 'DONE'"); // what north wrote, at the later time
    }
    assertInstanceOf(Verdict.Broken.class, verdict());
  }

  @Test
  void benchesAreJoinedOnlyWhereTheyWriteOfTheSame() {
    try (Collection room = Collection.open(file, TODAY)) {
      room.atBench("south").trays().save(RepositoryContractTest.tray("T-b", Tray.State.DONE));
      room.atBench("north").trays().save(RepositoryContractTest.tray("T-c", Tray.State.DONE));
      // by hand: joined before south wrote of T-a, and as south's first word of a new day
      assertEquals(
          2,
          room.dayBook().entries().stream().filter(e -> e.bench().equals(DayBook.JOINING)).count());
    }
  }
}
