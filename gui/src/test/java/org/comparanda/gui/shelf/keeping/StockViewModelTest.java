package org.comparanda.gui.shelf.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two sheep of which humeri were measured: nothing to mix up, nothing to want. */
class StockViewModelTest {
  @TempDir Path folder;
  private Collection collection;

  @BeforeEach
  void open() {
    collection = KeepersRoom.collection(folder);
  }

  @AfterEach
  void close() {
    collection.close();
  }

  @Test
  void itSaysWhichElementIsTriedAndThenHowManyPairs() {
    StockViewModel stock =
        new StockViewModel(KeepersRoom.of(collection), Runnable::run, Runnable::run);
    List<String> said = new ArrayList<>();
    stock.sentenceProperty().addListener((o, was, is) -> said.add(is));
    stock.look();
    assertTrue(said.contains("Trying every animal: humerus, 1 of 1 …"), said.toString());
    assertEquals(
        "No pair is mixed up in 10 of 100 animals or more.", stock.sentenceProperty().get());
    assertEquals(2, stock.stockProperty().get().cells().get(0).animals());
  }

  @Test
  void whenThePageIsLeftNothingIsTriedAnyMore() {
    List<Runnable> waiting = new ArrayList<>();
    StockViewModel stock =
        new StockViewModel(KeepersRoom.of(collection), waiting::add, Runnable::run);
    stock.look();
    stock.stop();
    waiting.remove(0).run();
    assertEquals(List.of(), stock.stockProperty().get().cells());
  }

  @Test
  void theWantedListSaysWhichElementIsComputed() {
    WantedViewModel wanted =
        new WantedViewModel(KeepersRoom.of(collection), Runnable::run, Runnable::run);
    List<String> said = new ArrayList<>();
    wanted.sentenceProperty().addListener((o, was, is) -> said.add(is));
    wanted.look();
    assertTrue(said.contains("Computing the gains: humerus, 1 of 1 …"), said.toString());
    assertEquals(
        "No element has two taxa and animals enough for a spread. Measure more animals: the page"
            + " Animals.",
        wanted.sentenceProperty().get());
  }
}
