package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Optional;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.bench.HintsViewModel.Hint;
import org.comparanda.gui.capture.MapMemory;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hints stand beside the work of a first time and never before it. */
class HintsTest {
  @TempDir private Path folder;
  private final MapMemory memory = new MapMemory(new HashMap<>());
  private BareBench room;
  private BenchViewModel bench;

  @BeforeEach
  void open() {
    room = BareBench.in(folder, memory);
    bench = new BenchViewModel(room.place());
  }

  @AfterEach
  void close() {
    room.close();
  }

  private Optional<Hint> hint() {
    return bench.hints().shownProperty().get();
  }

  private void read(String value) {
    value.chars().forEach(c -> bench.readings().typed((char) c));
    bench.readings().pressed(NamedKey.ENTER);
  }

  private void notPossible() {
    bench.readings().typed('-');
    bench.readings().typed('1');
  }

  @Test
  void eachStepOfTheWorkHasItsHintUntilTheCall() {
    assertEquals(Optional.of(Hint.TRAY), hint());
    bench.choose(BareBench.TRAY);
    assertEquals(Optional.of(Hint.STATE), hint());
    bench.state().typed('\n');
    assertEquals(Optional.of(Hint.FIRST_READING), hint());
    read("15.8");
    assertEquals(Optional.of(Hint.FALLING_LINE), hint());
    bench.hints().gotIt();
    assertEquals(Optional.of(Hint.NOT_POSSIBLE), hint());
    notPossible();
    notPossible();
    notPossible();
    assertEquals(Optional.of(Hint.SECOND_PASS), hint());
    read("15.8");
    assertEquals(Optional.of(Hint.CALL), hint());
    bench.call().taxonProperty().set("Ovis aries");
    bench.call().record();
    assertEquals(Optional.of(Hint.SLIP), hint());
  }

  @Test
  void onTheDemoWhoseBonesAreBegunTheFallingLineIsExplainedFirst() {
    try (DemoBench demo = DemoBench.in(folder, Runnable::run)) {
      BenchViewModel first = new BenchViewModel(demo.place());
      DemoBench.choose(first, "easy", "K-101");
      assertEquals(Optional.of(Hint.FALLING_LINE), first.hints().shownProperty().get());
      first.hints().gotIt();
      assertEquals(Optional.of(Hint.SECOND_PASS), first.hints().shownProperty().get());
    }
  }

  @Test
  void withoutAnyTrayNoHintSpeaksOfTrays() {
    room.close();
    try (Collection nothing =
        Collection.create(folder.resolve("none" + Collection.ENDING), RoomPlace.CLOCK)) {
      BenchViewModel alone =
          new BenchViewModel(RoomPlace.of(nothing, Runnable::run, new MapMemory(new HashMap<>())));
      assertEquals(Optional.empty(), alone.hints().shownProperty().get());
    }
    open();
  }

  @Test
  void whatWasDoneIsNotHintedAtAgainAfterARestart() {
    bench.choose(BareBench.TRAY);
    bench.state().typed('\n');
    room.close();
    open();
    bench.choose(BareBench.EMPTY); // back to a bench without a bone
    assertEquals(Optional.empty(), hint());
  }

  @Test
  void noHintsMeansNoneOnThisComputer() {
    bench.hints().noMore();
    assertEquals(Optional.empty(), hint());
    room.close();
    open();
    bench.choose(BareBench.TRAY);
    assertEquals(Optional.empty(), hint());
  }
}
