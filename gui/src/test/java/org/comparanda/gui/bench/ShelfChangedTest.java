package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import org.comparanda.gui.app.HouseTaxa;
import org.comparanda.gui.capture.MapMemory;
import org.comparanda.measurement.PersonId;
import org.comparanda.register.ChangeNote;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a keeper changes on the Shelf reaches the Bench without a new start. Simulated animals. */
class ShelfChangedTest {
  private static final ChangeNote NOTE = new ChangeNote(new PersonId("demo"), "new list");
  private static final TaxonName GOAT = new TaxonName("Capra hircus");
  private static final TaxonName NOW = new TaxonName("Capra nova");

  @TempDir Path folder;
  private DemoBench demo;
  private HouseTaxa taxa;
  private BenchViewModel bench;

  @BeforeEach
  void open() {
    demo = DemoBench.in(folder, Runnable::run);
    taxa = new HouseTaxa(demo.collection().names(), ReferenceTables.shipped().taxa());
    bench =
        new BenchViewModel(
            RoomPlace.of(demo.collection(), Runnable::run, new MapMemory(new HashMap<>()), taxa));
    DemoBench.choose(bench, "easy", "K-101");
  }

  @AfterEach
  void close() {
    demo.close();
  }

  private List<TaxonName> compared() {
    return bench.findingProperty().get().orElseThrow().suggestion().taxa().stream()
        .map(TaxonFit::taxon)
        .toList();
  }

  @Test
  void aRenamedTaxonIsInTheAnswerAndAmongTheNamesOfACall() {
    assertTrue(compared().contains(GOAT));
    demo.collection().names().rename(GOAT, NOW, ReferenceTables.shipped().taxa(), NOTE);
    taxa.again();
    bench.lookAgain();
    assertTrue(compared().contains(NOW));
    assertFalse(compared().contains(GOAT));
    assertTrue(bench.call().names().contains("Capra nova"));
    assertFalse(bench.call().names().contains("Capra hircus"), "an old name is not proposed");
  }

  @Test
  void aTaxonWhoseAnimalsWereRetiredIsNoLongerCompared() {
    demo.collection().animals().shelf().animals().stream()
        .filter(animal -> animal.taxon().equals(Optional.of(GOAT)))
        .forEach(animal -> demo.collection().register().retire(animal.id(), NOTE));
    bench.lookAgain();
    assertFalse(compared().contains(GOAT));
  }

  @Test
  void nothingIsReckonedAnewWhereNothingChanged() {
    Finding before = bench.findingProperty().get().orElseThrow();
    bench.lookAgain();
    assertSame(before, bench.findingProperty().get().orElseThrow());
    assertEquals(Optional.of(before), bench.findingProperty().get());
  }
}
