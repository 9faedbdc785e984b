package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.comparanda.daybook.Verdict;
import org.comparanda.tray.Lot;
import org.comparanda.tray.LotNotes;
import org.comparanda.tray.Tray;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Provenance and hazards belong to the lot. All rows are invented. */
class LotsInFileTest {
  private static final Clock TODAY =
      Clock.fixed(Instant.parse("2026-11-25T10:15:30Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  @Test
  void traysOfAnOlderFormGiveTheirWordsToTheirLotsAndLoseNone() throws Exception {
    Path older = folder.resolve("older.comparanda");
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + older);
        Statement statement = connection.createStatement()) {
      Flyway.configure()
          .dataSource("jdbc:sqlite:" + older, "", "")
          .locations(
              "classpath:org/comparanda/storage/schema", "classpath:org/comparanda/storage/sqlite")
          .target("8")
          .load()
          .migrate();
      statement.execute(
          "insert into tray values ('A1', 1, 'A', 'one', 'RECENT', 'pit 4', 'arsenic', 'WAITING'),"
              + " ('A2', 2, 'A', 'two', 'RECENT', 'pit 4', 'arsenic', 'WAITING'),"
              + " ('B1', 3, 'B', 'one', 'RECENT', 'pit 5', 'mould', 'WAITING'),"
              + " ('B2', 4, 'B', 'two', 'RECENT', '', 'lead', 'WAITING'),"
              + " ('C1', 5, 'C', 'one', 'RECENT', '', '', 'WAITING')");
      statement.execute("pragma application_id = " + Schema.APPLICATION_ID);
      statement.execute("pragma user_version = 8");
    }
    try (Collection room = Collection.open(older, TODAY)) {
      assertEquals(
          List.of(
              new LotNotes("pit 4", "arsenic"), new LotNotes("", "mould; lead"), LotNotes.none()),
          room.lots().all().stream().map(Lot::notes).toList());
      List<Tray> trays = room.trays().all();
      assertEquals(
          List.of(
              LotNotes.none(),
              LotNotes.none(),
              new LotNotes("pit 5", "mould"),
              new LotNotes("", "lead"),
              LotNotes.none()),
          trays.stream().map(Tray::own).toList());
      assertEquals(
          List.of("pit 4", "pit 4", "pit 5", "", ""),
          trays.stream().map(Tray::provenance).toList());
      assertEquals(
          List.of("arsenic", "arsenic", "mould; lead", "mould; lead", ""),
          trays.stream().map(Tray::hazards).toList());
      assertInstanceOf(Verdict.Sound.class, room.verifyDayBook(room.dayBookHead()));
    }
    try (Collection again = Collection.open(older, TODAY)) {
      assertEquals("arsenic", again.lots().lot("A").notes().hazards());
    }
  }

  @Test
  void wordsOfTheLotHoldForAllItsTraysAndATraysOwnStandBeside() {
    try (Collection room = Collection.create(folder.resolve("c.comparanda"), TODAY)) {
      Tray tray = RepositoryContractTest.tray("T-a", Tray.State.WAITING);
      room.trays().save(tray);
      room.lots().save(Lot.named("lot").withNotes(new LotNotes("old quarry", "silica dust")));
      Tray read = room.trays().all().get(0);
      assertEquals("old quarry; pit 4", read.provenance());
      assertEquals("silica dust; arsenic", read.hazards());
      room.trays().save(read.withState(Tray.State.DONE));
      assertEquals(tray.own(), room.trays().all().get(0).own());
      room.trays().save(read.withOwn(new LotNotes("", "dust")));
      assertEquals("silica dust", room.trays().all().get(0).hazards());
      assertInstanceOf(Verdict.Sound.class, room.verifyDayBook(room.dayBookHead()));
    }
  }
}
