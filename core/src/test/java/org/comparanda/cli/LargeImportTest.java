package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import org.comparanda.exchange.table.FileContent;
import org.comparanda.exchange.table.ReadingProgress;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.outside.ProofRecord;
import org.comparanda.register.AnimalCard;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A large table of invented animals on its way into a collection that has one. */
class LargeImportTest {
  private static final int ROWS = ProofRecord.full() ? 100_000 : 12_000;
  private static final String HEAP = ProofRecord.full() ? "-Xmx512m" : "-Xmx96m";

  @TempDir Path folder;
  private Path collection;
  private Path table;

  @BeforeEach
  void oneAnimalAndALargeTable() throws IOException {
    collection = folder.resolve("large.comparanda");
    Path first =
        Files.writeString(
            folder.resolve("first.csv"), "animal,taxon,element,GL\nA-1,Ovis aries,humerus,150\n");
    assertEquals(
        Terminal.FINE, Typed.command("shelf", "add", first, "--collection", collection).code());
    table = folder.resolve("large.csv");
    try (var out = Files.newBufferedWriter(table)) {
      out.write("animal,taxon,element,side,GL,GLC,SD,Bd,BT,HTC\n");
      for (int i = 0; i < ROWS; i++) {
        double size = 1 + 0.0001 * (i % 1000);
        out.write(
            String.format(
                java.util.Locale.ROOT,
                "B-%d,Ovis aries,humerus,left,%.1f,%.1f,%.1f,%.1f,%.1f,%.1f%n",
                i,
                150 * size,
                140 * size,
                16 * size,
                33 * size,
                31 * size,
                15 * size));
      }
    }
  }

  @Test
  void itGoesInWithinASmallHeapAndSaysHowFarItIs() throws Exception {
    long begun = System.nanoTime();
    Process other = shelfAdd();
    List<String> said = lines(other);
    assertEquals(Terminal.FINE, other.waitFor(), said.toString());
    long seconds = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - begun);
    assertTrue(said.contains("10000 animals written, none valid yet"), said.toString());
    assertEquals(ROWS + 1, animals());
    ProofRecord.held(
        "large-import",
        "A large table is imported by shelf add with progress within a small heap",
        ROWS + " rows, " + HEAP,
        0,
        "all stored, all read back; " + seconds + " s");
  }

  @Test
  void killedHalfWayItLeavesTheCollectionAsItWasAndIsThenGoneOnWith() throws Exception {
    String before = contentHash();
    Process other = shelfAdd();
    try (BufferedReader said = other.inputReader(StandardCharsets.UTF_8)) {
      String line = said.readLine();
      while (line != null && !line.contains("animals written")) {
        line = said.readLine();
      }
      other.destroyForcibly();
      assertTrue(line != null, "it was still writing");
    }
    other.waitFor();
    assertEquals(before, contentHash());
    Process again = shelfAdd();
    List<String> said = lines(again);
    assertEquals(Terminal.FINE, again.waitFor(), said.toString());
    assertTrue(
        said.stream().anyMatch(l -> l.startsWith("10000 of " + ROWS + " animals of this table")),
        said.toString());
    Path never = folder.resolve("never.comparanda");
    Typed.command("shelf", "add", folder.resolve("first.csv"), "--collection", never);
    Typed.command("shelf", "add", table, "--collection", never);
    assertEquals(rows(never), rows(collection));
    ProofRecord.held(
        "killed-import",
        "A large import killed half-way leaves the collection unchanged; begun again in another"
            + " program it goes on from there and ends row for row as one never killed",
        ROWS + " rows, " + HEAP,
        0,
        said.get(0));
  }

  /** Every row of every table, but for what the time of the import stands in. */
  private static List<String> rows(Path collection) {
    List<String> rows = new ArrayList<>();
    try (Collection open = Collection.open(collection, Typed.CLOCK)) {
      open.eachRow(
          (table, row) -> {
            if (!List.of("day_book", "shelf_change", "imported_table").contains(table)) {
              rows.add(table + " " + row);
            }
          });
    }
    return rows;
  }

  @Test
  void stoppedWhileReadingOrWritingItLeavesTheCollectionAsItWas() throws IOException {
    String before = contentHash();
    ReferenceTables words = ReferenceTables.shipped();
    TableReader reader =
        TableReader.of(words.protocol(), words.taxa(), TableOptions.withDefaults());
    try (Collection open = Collection.open(collection, Typed.CLOCK)) {
      Assertions.assertThrows(
          CancellationException.class,
          () -> reader.watchedBy(new StoppedOnceTold()).cardsFor(open.animals().shelf(), table));
      List<AnimalCard> animals =
          reader
              .cardsFor(open.animals().shelf(), table)
              .fold(read -> read.content(), report -> List.of());
      assertEquals(ROWS, animals.size());
      assertEquals(
          0,
          open.tableIntake()
              .bringIn(FileContent.sha256(table), "large.csv", animals, soFar -> soFar < ROWS / 2));
    }
    assertEquals(before, contentHash());
  }

  /** Asks to stop as soon as it heard how far the reading is. */
  private static final class StoppedOnceTold implements ReadingProgress {
    private boolean told;

    @Override
    public void read(long bytes, long ofBytes) {
      told = true;
    }

    @Override
    public boolean cancelled() {
      return told;
    }
  }

  private Process shelfAdd() throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(HEAP, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(Comparanda.class.getName());
    command.addAll(
        List.of("shelf", "add", table.toString(), "--collection", collection.toString()));
    return new ProcessBuilder(command).redirectErrorStream(true).start();
  }

  private static List<String> lines(Process process) throws IOException {
    try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
      return said.lines().toList();
    }
  }

  private int animals() {
    try (Collection open = Collection.open(collection, Typed.CLOCK)) {
      return open.animals().shelf().animals().size();
    }
  }

  private String contentHash() {
    try (Collection open = Collection.open(collection, Typed.CLOCK)) {
      return open.contentHash();
    }
  }
}
