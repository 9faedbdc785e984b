package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Source;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The file: what it says when it can't be used, and that it then stays as it was. */
class CollectionFileTest {
  @TempDir static Path store;
  @TempDir Path folder;

  @BeforeAll
  static void makeASoundOne() {
    try (Collection collection =
        Collection.create(store.resolve("sound.comparanda"), Clock.systemUTC())) {
      collection
          .animals()
          .add(IntStream.range(0, 500).mapToObj(CollectionFileTest::animal).toList());
      collection.readings().append(reading("30"));
    }
  }

  private Path sound() throws IOException {
    return Files.copy(store.resolve("sound.comparanda"), folder.resolve("c.comparanda"));
  }

  private static Animal animal(int number) {
    return new Animal(
        new AnimalId("A-" + number),
        Optional.empty(),
        Source.PUBLICATION,
        Optional.empty(),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "invented",
        List.of());
  }

  static Reading reading(String typed) {
    return new Reading(
        0,
        new BoneId("HM-1"),
        new ElementKey("humerus"),
        new MeasurementCode("Bd"),
        Reading.Kind.TAKE,
        typed,
        Optional.of(new Length(30)),
        new PersonId("p1"),
        Instant.EPOCH,
        1,
        false,
        Optional.empty(),
        Optional.empty(),
        "");
  }

  private CollectionProblem refused(Path file) {
    return assertThrows(
        CollectionProblem.class, () -> Collection.open(file, Clock.systemUTC()).close());
  }

  @Test
  void missingFileIsSaidAndNotMade() {
    Path file = folder.resolve("none.comparanda");
    assertEquals(
        "There is no collection \""
            + file
            + "\". Nothing was changed. Check the name, or make a new collection there.",
        refused(file).getMessage());
    assertFalse(Files.exists(file));
  }

  @Test
  void folderIsNotACollection() {
    assertEquals(CollectionProblem.Kind.FOREIGN, refused(folder).kind());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "x", "animal,taxon\nA-1,Ovis aries\n", "SQLite format 3\0 but nothing else"})
  void otherFileIsSaidAndLeftAsItWas(String content) throws IOException {
    Path file = folder.resolve("other.comparanda");
    String longEnough = content.length() > 1 ? content + " ".repeat(100) : content;
    Files.writeString(file, longEnough);
    CollectionProblem problem = refused(file);
    assertEquals(CollectionProblem.Kind.FOREIGN, problem.kind());
    assertTrue(problem.getMessage().contains(file.toString()), problem.getMessage());
    assertEquals(longEnough, Files.readString(file));
    assertEquals(1, filesInFolder());
  }

  @Test
  void databaseOfAnotherProgramIsLeftAsItWas() throws Exception {
    Path file = folder.resolve("other.comparanda");
    execute(file, "create table reading (id integer)");
    byte[] before = Files.readAllBytes(file);
    assertTrue(refused(file).getMessage().contains("another program's database"));
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void newerFormIsLeftAsItWas() throws Exception {
    Path file = sound();
    execute(file, "pragma user_version = 1000");
    byte[] before = Files.readAllBytes(file);
    assertEquals(CollectionProblem.Kind.NEWER, refused(file).kind());
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void damagedFileIsSaidAndLeftAsItWas() throws IOException {
    Path file = sound();
    byte[] bytes = Files.readAllBytes(file);
    Arrays.fill(bytes, 8192, bytes.length - 4096, (byte) 0x5a);
    Files.write(file, bytes);
    CollectionProblem problem = refused(file);
    assertEquals(CollectionProblem.Kind.DAMAGED, problem.kind());
    assertTrue(problem.getMessage().contains("restore the latest backup"), problem.getMessage());
    assertArrayEquals(bytes, Files.readAllBytes(file));
  }

  @Test
  void fileCutShortIsDamaged() throws IOException {
    Path file = sound();
    byte[] half = Arrays.copyOf(Files.readAllBytes(file), (int) Files.size(file) / 2);
    Files.write(file, half);
    assertEquals(CollectionProblem.Kind.DAMAGED, refused(file).kind());
    assertArrayEquals(half, Files.readAllBytes(file));
  }

  @Test
  void fileThatAnotherProgramHoldsIsSaidAndLeftAsItWas() throws Exception {
    Path file = sound();
    byte[] before = Files.readAllBytes(file);
    try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = other.createStatement()) {
      statement.execute("pragma locking_mode = exclusive");
      statement.execute("begin exclusive");
      assertEquals(
          "\""
              + file
              + "\" is being written by another program. Nothing was changed. Wait until that is"
              + " done or close it, then try again.",
          refused(file).getMessage());
      statement.execute("rollback");
    }
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void existingFileIsNeverMadeAnew() throws IOException {
    Path file = sound();
    assertEquals(
        CollectionProblem.Kind.EXISTS,
        assertThrows(
                CollectionProblem.class, () -> Collection.create(file, Clock.systemUTC()).close())
            .kind());
    try (Collection still = Collection.openOrCreate(file, Clock.systemUTC())) {
      assertEquals(500, still.animals().shelf().animals().size());
    }
  }

  @Test
  void otherEndingIsRefused() {
    Path file = folder.resolve("c.db");
    assertEquals(
        CollectionProblem.Kind.WRONG_NAME,
        assertThrows(
                CollectionProblem.class, () -> Collection.create(file, Clock.systemUTC()).close())
            .kind());
    assertFalse(Files.exists(file));
  }

  @Test
  void closedCollectionIsOneFileAndSaysThatItIsClosed() throws IOException {
    Path file = folder.resolve("c.comparanda");
    Collection collection = Collection.create(file, Clock.systemUTC());
    collection.readings().append(reading("30"));
    collection.close();
    collection.close();
    assertEquals(1, filesInFolder());
    assertEquals(
        "\"" + file + "\" was closed. Open it again.",
        assertThrows(IllegalStateException.class, collection::contentHash).getMessage());
  }

  @Test
  void everyConnectionKeepsALogSyncsFullyAndChecksKeys() throws Exception {
    Path file = sound();
    for (SqliteConnections connections :
        List.of(SqliteConnections.reading(file), SqliteConnections.writing(file))) {
      try (Connection connection = connections.openConnection()) {
        assertEquals(new DurabilitySettings("wal", 2, 1), DurabilitySettings.readBack(connection));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"delete, 2, 1", "wal, 1, 1", "wal, 2, 0"})
  void weakerSettingsAreRefused(String journal, int synchronous, int foreignKeys) {
    DurabilitySettings weaker = new DurabilitySettings(journal, synchronous, foreignKeys);
    assertEquals(
        CollectionProblem.Kind.SETTINGS,
        assertThrows(CollectionProblem.class, () -> weaker.require(folder)).kind());
  }

  @Test
  void placeThatCannotKeepALogIsRefusedLoudly() {
    SqliteConnections memory = SqliteConnections.writing(Path.of(":memory:"));
    assertEquals(
        CollectionProblem.Kind.SETTINGS,
        assertThrows(CollectionProblem.class, memory::openConnection).kind());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update reading set as_typed = '31'",
        "delete from reading",
        "update shelf_change set animals = 1",
        "delete from shelf_change"
      })
  void theFileItselfRefusesToChangeOrRemoveARow(String sql) throws Exception {
    Path file = sound();
    SQLException refused = assertThrows(SQLException.class, () -> execute(file, sql));
    assertTrue(refused.getMessage().contains("add a new row instead"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"nfs", "nfs4", "cifs", "smb2", "fuse.sshfs", "9p"})
  void networkDriveIsSaid(String type) {
    String caution = NetworkDrive.caution(folder.resolve("c.comparanda"), type).orElseThrow();
    assertTrue(caution.contains("network drive (" + type + ")"), caution);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ext4", "xfs", "btrfs", "apfs", "NTFS", "tmpfs", "exfat"})
  void diskOfThisComputerIsFine(String type) {
    assertEquals(Optional.empty(), NetworkDrive.caution(folder.resolve("c.comparanda"), type));
  }

  private void execute(Path file, String sql) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  private long filesInFolder() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.count();
    }
  }
}
