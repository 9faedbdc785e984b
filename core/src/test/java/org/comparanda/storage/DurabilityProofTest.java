package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Reading;
import org.comparanda.outside.ProofRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was accepted is on the disk: kills of a real second JVM, and logs cut anywhere. */
class DurabilityProofTest {
  private static final long SEED = 20417;
  private static final BoneId BONE = new BoneId("HM-1");

  @TempDir Path folder;

  @Test
  void killAtAnyMomentLosesAndDoublesNothingThatWasAccepted() throws Exception {
    int kills = ProofRecord.full() ? 200 : 4;
    SplittableRandom random = new SplittableRandom(SEED);
    Path file = folder.resolve("c.comparanda");
    Collection.create(file, Clock.systemUTC()).close();
    int accepted = 0;
    int beyond = 0;
    List<String> stored = List.of();
    for (int round = 0; round < kills; round++) {
      List<String> acknowledged = appendAndKill(file, round, random);
      List<String> now = stored(file);
      String where = "seed " + SEED + ", kill " + round;
      assertEquals(stored, now.subList(0, stored.size()), "earlier rows, " + where);
      List<String> gained = now.subList(stored.size(), now.size());
      assertEquals(
          acknowledged, gained.subList(0, Math.min(acknowledged.size(), gained.size())), where);
      int more = gained.size() - acknowledged.size(); // the one written but not yet answered for
      assertTrue(more == 0 || more == 1, where + ": " + more + " rows nobody answered for");
      accepted += acknowledged.size();
      beyond += more;
      stored = now;
    }
    assertEquals(stored.size(), stored.stream().distinct().count(), "no row twice");
    ProofRecord.held(
        "kills",
        "A second JVM killed (SIGKILL) at random moments loses and doubles no accepted reading",
        kills + " kills",
        SEED,
        accepted
            + " accepted readings, all there once; "
            + beyond
            + " stored just before the kill");
  }

  private List<String> appendAndKill(Path file, int round, SplittableRandom random)
      throws IOException, InterruptedException {
    Process other =
        OtherProgram.start(List.of(), List.of(), "append", file.toString(), "r" + round, "1000000");
    List<String> acknowledged = new ArrayList<>();
    try (BufferedReader lines = other.inputReader(StandardCharsets.UTF_8)) {
      int until = random.nextInt(60);
      while (acknowledged.size() < until) {
        note(lines.readLine(), acknowledged);
      }
      // Not waiting for anything: moves the kill to a random place within a write.
      LockSupport.parkNanos(random.nextLong(8_000_000));
      other.toHandle().destroyForcibly(); // SIGKILL; unlike Process it leaves the answers readable
      lines.lines().forEach(line -> note(line, acknowledged));
    }
    other.waitFor();
    return acknowledged;
  }

  private static void note(String line, List<String> acknowledged) {
    List<String> words = Arrays.asList(line.split(" ", -1));
    if (words.size() == 3 && words.get(2).equals(".")) {
      acknowledged.add(words.get(1));
    }
  }

  private static List<String> stored(Path file) {
    try (Collection collection = Collection.open(file, Clock.systemUTC())) {
      return collection.readings().of(BONE).stream().map(Reading::asTyped).toList();
    }
  }

  @Test
  void logCutAnywhereOpensAndHoldsAPrefix() throws IOException {
    int cuts = ProofRecord.full() ? 500 : 12;
    int readings = 60;
    SplittableRandom random = new SplittableRandom(SEED);
    Path file = folder.resolve("c.comparanda");
    Path log = folder.resolve("c.comparanda-wal");
    List<String> typed = IntStream.range(0, readings).mapToObj(i -> "t" + i).toList();
    List<Long> logAfter = new ArrayList<>();
    byte[] fileBytes;
    byte[] logBytes;
    try (Collection collection = Collection.create(file, Clock.systemUTC())) {
      for (String text : typed) {
        collection.readings().append(CollectionFileTest.reading(text));
        logAfter.add(Files.size(log));
      }
      fileBytes = Files.readAllBytes(file);
      logBytes = Files.readAllBytes(log);
    }
    for (int cut = 0; cut < cuts; cut++) {
      int offset = random.nextInt(logBytes.length + 1);
      Path place = Files.createDirectory(folder.resolve("cut" + cut));
      Files.write(place.resolve("c.comparanda"), fileBytes);
      Files.write(place.resolve("c.comparanda-wal"), Arrays.copyOf(logBytes, offset));
      List<String> held = stored(place.resolve("c.comparanda"));
      String where = "seed " + SEED + ", log cut at " + offset;
      assertEquals(typed.subList(0, held.size()), held, where);
      long whole = logAfter.stream().filter(size -> size <= offset).count();
      assertTrue(held.size() >= whole, where + ": " + held.size() + " of " + whole + " held");
    }
    ProofRecord.held(
        "log-cuts",
        "The log cut at random offsets opens and holds a prefix of the accepted readings",
        cuts + " cuts of a log of " + logBytes.length + " bytes",
        SEED,
        "every reading whose commit lies before the cut is there, and no other order");
  }

  /** Watches the system calls of a second JVM: log written, log synced, only then the answer. */
  @Test
  void syncIsDoneBeforeEveryAnswer() throws Exception {
    assumeTrue(ProofRecord.full(), "runs in the proof profile");
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/strace")), "strace is not there");
    Path file = folder.resolve("c.comparanda");
    Path trace = folder.resolve("trace.txt");
    Collection.create(file, Clock.systemUTC()).close();
    Process other =
        OtherProgram.start(
            List.of(
                "/usr/bin/strace",
                "-f",
                "-y",
                "-e",
                "trace=write,pwrite64,fsync,fdatasync",
                "-o",
                trace.toString()),
            List.of(),
            "append",
            file.toString(),
            "r",
            "50");
    try (BufferedReader lines = other.inputReader(StandardCharsets.UTF_8)) {
      assertEquals(50, lines.lines().count());
    }
    assertEquals(0, other.waitFor());
    int answers = new SystemCalls(Files.readAllLines(trace)).answersAfterASync();
    assertEquals(50, answers);
    ProofRecord.held(
        "sync-trace",
        "A system-call trace shows the log written and a completed sync before each answer",
        "50 readings",
        0,
        answers + " answers, each after its sync");
  }
}
