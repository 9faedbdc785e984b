package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bone that was measured before is not greeted as a new one while the shelf is read. */
class WaitingForAnswerTest {
  @TempDir private Path folder;

  @Test
  void aMeasuredBoneWaitsForItsAnswerUntilTheShelfWasRead() {
    Queue<Runnable> waiting = new ArrayDeque<>();
    try (DemoBench room = DemoBench.in(folder, waiting::add)) {
      BenchViewModel bench = new BenchViewModel(room.place());
      DemoBench.choose(bench, "hard", "K-202");
      assertEquals(Optional.empty(), bench.findingProperty().get());
      assertTrue(bench.comingProperty().get());
      while (!waiting.isEmpty()) {
        waiting.remove().run();
      }
      assertTrue(bench.findingProperty().get().isPresent());
      assertFalse(bench.comingProperty().get());
    }
  }

  @Test
  void anUnmeasuredBoneWaitsForNothing() {
    try (DemoBench room = DemoBench.in(folder, Runnable::run)) {
      BenchViewModel bench = new BenchViewModel(room.place());
      DemoBench.choose(bench, "fresh", "N-1");
      assertFalse(bench.comingProperty().get());
    }
  }
}
