package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.locks.LockSupport;
import org.comparanda.bone.BoneAge;
import org.comparanda.measurement.BoneId;
import org.comparanda.outside.ProofRecord;
import org.comparanda.tray.NumberRule;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two benches number bones of one tray at once, and both are killed at random moments. */
class NumbersProofTest {
  private static final long SEED = 20417;
  private static final Tray TRAY =
      new Tray(new TrayId("t1"), "L1", "Tray", BoneAge.RECENT, "", "", Tray.State.WAITING);

  @TempDir private Path folder;

  @Test
  void noNumberIsGivenTwiceAndEveryNumberSaidHasItsBone() throws Exception {
    int rounds = ProofRecord.full() ? 50 : 1;
    SplittableRandom random = new SplittableRandom(SEED);
    Path file = folder.resolve("c.comparanda");
    try (Collection collection = Collection.create(file, Clock.systemUTC())) {
      collection.trays().save(TRAY);
      collection.numbering().setRule(TRAY.id(), new NumberRule("H-{number:4}"));
    }
    List<String> said = new ArrayList<>();
    for (int round = 0; round < rounds; round++) {
      said.addAll(numberAndKill(file, random));
    }
    assertTrue(said.size() >= 2 * rounds, said.size() + " numbers were said");
    assertEquals(said.size(), new HashSet<>(said).size(), "no number twice, seed " + SEED);
    Set<String> standing = new HashSet<>();
    try (Collection collection = Collection.open(file, Clock.systemUTC())) {
      List<TrayBone> bones = collection.trays().bonesOf(TRAY.id());
      bones.stream().map(TrayBone::id).map(BoneId::value).forEach(standing::add);
      assertEquals(bones.size(), standing.size());
      BoneId next = collection.numbering().next(TRAY);
      assertTrue(!standing.contains(next.value()), next + " would come again");
    }
    assertTrue(standing.containsAll(said), "a number was said and its bone is not there");
    int unsaid = standing.size() - said.size();
    assertTrue(unsaid <= 2 * rounds, unsaid + " bones whose number nobody heard");
    ProofRecord.held(
        "numbers-killed",
        "Two JVMs number bones of one tray at once and are killed (SIGKILL) at random moments:"
            + " no number comes twice, every number said has its bone",
        2 * rounds + " kills",
        SEED,
        said.size() + " numbers said, all there once; " + unsaid + " stored just before a kill");
  }

  private static List<String> numberAndKill(Path file, SplittableRandom random)
      throws IOException, InterruptedException {
    List<Process> benches = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      benches.add(
          OtherProgram.start(List.of(), List.of(), "number", file.toString(), TRAY.id().value()));
    }
    List<String> said = new ArrayList<>();
    List<BufferedReader> answers = new ArrayList<>();
    for (Process bench : benches) {
      BufferedReader lines = bench.inputReader(StandardCharsets.UTF_8);
      answers.add(lines);
      int until = 1 + random.nextInt(20);
      for (int i = 0; i < until; i++) {
        note(lines.readLine(), said);
      }
    }
    for (Process bench : benches) {
      // Not waiting for anything: moves the kill to a random place within a write.
      LockSupport.parkNanos(random.nextLong(8_000_000));
      bench.toHandle().destroyForcibly(); // SIGKILL; its answers stay readable
    }
    for (BufferedReader lines : answers) {
      lines.lines().forEach(line -> note(line, said));
      lines.close();
    }
    for (Process bench : benches) {
      bench.waitFor();
    }
    return said;
  }

  private static void note(String line, List<String> said) {
    List<String> words = List.of(line.split(" ", -1));
    if (words.size() == 3 && words.get(2).equals(".")) {
      said.add(words.get(1));
    }
  }
}
