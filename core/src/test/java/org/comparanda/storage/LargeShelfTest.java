package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.comparanda.outside.ProofRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LargeShelfTest {
  @TempDir Path folder;

  /** A JVM of its own with a small heap; the animals come from an iterator, one at a time. */
  @Test
  void manyAnimalsGoInWithinASmallHeap() throws Exception {
    int animals = ProofRecord.full() ? 100_000 : 5_000;
    String heap = ProofRecord.full() ? "-Xmx512m" : "-Xmx32m";
    Path file = folder.resolve("large.comparanda");
    Process other =
        OtherProgram.start(
            List.of(), List.of(heap), "add", file.toString(), String.valueOf(animals));
    try (BufferedReader lines = other.inputReader(StandardCharsets.UTF_8)) {
      assertEquals(String.valueOf(animals), lines.readLine());
    }
    assertEquals(0, other.waitFor());
    try (Collection collection = Collection.open(file, Clock.systemUTC())) {
      assertEquals(animals, collection.animals().shelf().animals().size());
    }
    ProofRecord.held(
        "large-shelf",
        "A large table of animals is stored in one transaction within a small heap",
        animals + " animals, " + heap,
        0,
        "all stored, all read back");
  }
}
