package org.comparanda.gui.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableOptions.Unknown;
import org.comparanda.exchange.table.TableProblem;
import org.comparanda.exchange.table.TableProblem.Answer.SayUnit;
import org.comparanda.gui.shelf.ImportState.Stage;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.SetDown;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.HouseNames;
import org.comparanda.taxon.HouseTaxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables invented for the test. */
class ShelfViewModelTest {
  static final ReferenceTables TABLES = ReferenceTables.shipped();
  static final String SOUND =
      """
      animal,taxon,element,side,drawer,flags,body_mass [g],GL [mm],Bd [mm]
      T-1,Ovis aries,humerus,left,C 4,,41500,151.2,31.0
      T-1,Ovis aries,humerus,right,C 4,crushed,41500,150.8,31.2
      T-2,Ovis aries,femur,left,C 4,,38000,172.0,35.1
      T-3,Capra hircus,humerus,left,C 6,,,149.0,30.2
      T-4,Capra hircus,humerus,left,C 6,cast,,148.0,30.0
      """;

  @TempDir Path folder;
  private final AnimalsInMemory animals = new AnimalsInMemory();
  private final ShelfViewModel shelf = model(animals);

  static ShelfViewModel model(AnimalsInMemory animals) {
    return model(animals, Runnable::run);
  }

  private static ShelfViewModel model(AnimalsInMemory animals, Executor work) {
    return new ShelfViewModel(
        new ShelfRoom(
            animals,
            animals,
            List::of,
            TABLES.protocol(),
            TABLES::taxa,
            Words.of("shelf", Locale.ENGLISH),
            Locale.ENGLISH),
        work,
        Runnable::run);
  }

  @BeforeEach
  void fill() throws IOException {
    shelf.refresh();
    shelf.tryImport(table(SOUND));
    shelf.addSound();
    shelf.leaveImport();
  }

  @Test
  void aTableWithWordsOfItsOwnIsAskedAboutFirstAndReadAsThePersonSays() throws IOException {
    shelf.tryImport(table("Specimen,Species,Bone,GL_mm,Painter\nT-9,Ovis aries,humerus,150,x\n"));
    ImportState asked = shelf.importProperty().get();
    assertEquals(Stage.MAPPING, asked.stage());
    assertEquals(
        List.of("animal", "taxon", "bone", "GL", ""),
        asked.mapping().orElseThrow().preview().columns().stream()
            .map(c -> c.role().orElse(""))
            .toList());
    assertEquals(
        List.of(List.of("T-9", "Ovis aries", "humerus", "150", "x")),
        asked.mapping().orElseThrow().preview().rows());
    shelf.tryMapped(
        List.of(
            new ColumnChoice("Specimen", Optional.of("animal"), Optional.empty()),
            new ColumnChoice("Species", Optional.of("taxon"), Optional.empty()),
            new ColumnChoice("Bone", Optional.of("element"), Optional.empty()),
            new ColumnChoice("GL_mm", Optional.of("GL"), Optional.of(LengthUnit.MILLIMETRE)),
            new ColumnChoice("Painter", Optional.empty(), Optional.empty())),
        TableOptions.Unknown.REFUSE);
    assertEquals(Stage.SOUND, shelf.importProperty().get().stage());
    assertEquals(4, animals.shelf().animals().size());
    shelf.addSound();
    assertEquals(5, animals.shelf().animals().size());
  }

  @Test
  void soundTableIsStoredOnlyWhenThePersonSaysSo() throws IOException {
    shelf.tryImport(table("animal,taxon,element,GL\nT-9,Ovis aries,humerus,150\n"));
    assertEquals(Stage.SOUND, shelf.importProperty().get().stage());
    assertEquals(4, animals.shelf().animals().size());
    shelf.addSound();
    assertEquals(Stage.ADDED, shelf.importProperty().get().stage());
    assertEquals(5, shelf.listed().size());
  }

  @Test
  void importLeftAddsNothingLater() throws IOException {
    shelf.tryImport(table("animal,taxon,element,GL\nT-9,Ovis aries,humerus,150\n"));
    shelf.leaveImport();
    shelf.addSound();
    assertEquals(4, animals.shelf().animals().size());
  }

  @Test
  void faultyTableListsEveryProblemWithPlaceAndRemedy() throws IOException {
    shelf.tryImport(
        table(
            """
            animal,taxon,element,GL [mm]
            T-8,Ovis aries,humerus,15o.2
            T-1,Ovis aries,humerus,150.0
            T-9,Ovis aries,wing,151.0
            """));
    ImportState state = shelf.importProperty().get();
    assertEquals(Stage.REFUSED, state.stage());
    assertEquals(
        List.of(2L, 3L, 4L), state.problems().stream().map(p -> p.row().orElseThrow()).toList());
    for (TableProblem problem : state.problems()) {
      assertTrue(problem.column().isPresent() && problem.value().isPresent(), problem.sentence());
      assertTrue(!problem.message().isBlank() && !problem.remedy().isBlank(), problem.sentence());
    }
    shelf.addSound();
    assertEquals(4, animals.shelf().animals().size());
  }

  @Test
  void columnInCentimetresIsTakenOnceThePersonSaysSo() throws IOException {
    shelf.tryImport(table("animal,taxon,element,GL\nT-9,Ovis aries,humerus,14.9\n"));
    ImportState state = shelf.importProperty().get();
    assertEquals(Stage.REFUSED, state.stage());
    assertEquals(
        List.of(new SayUnit(new MeasurementCode("GL"), LengthUnit.CENTIMETRE)),
        state.unitQuestions());
    shelf.tryAgain(Map.of("GL", LengthUnit.CENTIMETRE), Unknown.REFUSE);
    shelf.addSound();
    Animal added = animals.shelf().animal(new AnimalId("T-9")).orElseThrow();
    assertEquals(149.0, added.bones().get(0).values().get(new MeasurementCode("GL")), 1e-9);
  }

  @Test
  void newNamesAreTakenOnlyWhenThePersonSaysSo() throws IOException {
    shelf.tryImport(table("animal,taxon,element,GL\nT-9,Lepus invented,humerus,149\n"));
    assertTrue(shelf.importProperty().get().namesAreUnknown());
    assertEquals(4, animals.shelf().animals().size());
    shelf.tryAgain(Map.of(), Unknown.REGISTER);
    assertEquals(Stage.SOUND, shelf.importProperty().get().stage());
  }

  @Test
  void stoppedWhileReadingOrWritingNothingIsStored() throws IOException {
    ArrayDeque<Runnable> later = new ArrayDeque<>();
    ShelfViewModel waiting = model(animals, later::add);
    waiting.tryImport(table("animal,taxon,element,GL\nT-9,Ovis aries,humerus,150\n"));
    waiting.stopImport();
    later.remove().run();
    assertEquals(Stage.STOPPED, waiting.importProperty().get().stage());
    waiting.tryImport(table("animal,taxon,element,GL\nT-9,Ovis aries,humerus,150\n"));
    later.remove().run(); // the look at its header
    later.remove().run();
    waiting.addSound();
    assertEquals(Stage.WRITING, waiting.importProperty().get().stage());
    waiting.stopImport();
    later.remove().run();
    assertEquals(Stage.STOPPED, waiting.importProperty().get().stage());
    assertEquals(4, animals.shelf().animals().size());
  }

  @Test
  void aTitleAboveTheHeaderIsRecognisedAndAskedAbout() throws IOException {
    String text = "Sheep of the house\n\nanimal,taxon,element,GL\nT-9,Ovis aries,humerus,150\n";
    shelf.tryImport(table(text));
    ImportState asked = shelf.importProperty().get();
    assertEquals(Stage.MAPPING, asked.stage());
    assertTrue(asked.sentence().startsWith("The header seems to stand in row 3"));
    List<ColumnChoice> choices =
        asked.mapping().orElseThrow().preview().columns().stream()
            .map(g -> new ColumnChoice(g.header(), g.role(), g.unit()))
            .toList();
    shelf.tryMapped(choices, Unknown.REFUSE);
    assertEquals(Stage.SOUND, shelf.importProperty().get().stage());
    shelf.tryHeaderRow(1);
    assertEquals(1, shelf.importProperty().get().mapping().orElseThrow().preview().headerRow());
    shelf.tryHeaderRow(3); // all headers are our own words: nothing to ask
    assertEquals(Stage.SOUND, shelf.importProperty().get().stage());
  }

  @Test
  void whatAnInterruptedImportHasSetDownIsSaidAndCanBeForgotten() throws IOException {
    animals.setDown(new SetDown("t.csv", Instant.parse("2026-11-20T08:00:00Z"), 5_000, 12_000));
    Path table = table("animal,taxon,element,GL\nT-9,Ovis aries,humerus,150\n");
    shelf.tryImport(table);
    assertEquals(
        Optional.of(
            "5,000 of 12,000 animals of this table were set down on 2026-11-20, when an import was"
                + " stopped; adding goes on from there."),
        shelf.importProperty().get().begun());
    shelf.addFromStart();
    assertEquals(Stage.ADDED, shelf.importProperty().get().stage());
    assertEquals(Optional.empty(), animals.begun(table));
    assertEquals(5, animals.shelf().animals().size());
  }

  @Test
  void stoppedWhileWritingItSaysWhatIsSetDown() throws IOException {
    ArrayDeque<Runnable> later = new ArrayDeque<>();
    ShelfViewModel waiting = model(animals, later::add);
    waiting.tryImport(table("animal,taxon,element,GL\nT-9,Ovis aries,humerus,150\n"));
    later.remove().run();
    later.remove().run();
    waiting.addSound();
    animals.setDown(new SetDown("t.csv", Instant.parse("2026-11-20T08:00:00Z"), 5_000, 12_000));
    waiting.stopImport();
    later.remove().run();
    assertEquals(
        "Stopped. Nothing was stored; the collection is as it was. 5,000 of 12,000 animals are set"
            + " down beside it for 30 days: trying the same table again goes on from there.",
        waiting.importProperty().get().sentence());
  }

  @Test
  void everyWordOfTheSearchMustStandInTheRecord() {
    shelf.filterText("ovis c 4");
    assertEquals(List.of("T-1", "T-2"), listed());
    shelf.filterText("ovis t-2");
    assertEquals(List.of("T-2"), listed());
    assertEquals("1 of 4 animals", shelf.countProperty().get());
  }

  @Test
  void taxonAndElementNarrowTheListTogether() {
    shelf.filterTaxon(Optional.of(new TaxonName("Ovis aries")));
    shelf.filterElement(Optional.of(new ElementKey("humerus")));
    assertEquals(List.of("T-1"), listed());
    shelf.filterNothing();
    assertEquals(4, shelf.listed().size());
  }

  @Test
  void stockCountsAnimalsThatFeedFits() {
    Stock stock = shelf.stockProperty().get();
    assertEquals(List.of(new ElementKey("femur"), new ElementKey("humerus")), stock.elements());
    // T-4 is a cast; T-1 keeps its sound left humerus.
    assertEquals(
        List.of(
            new Stock.Row(new TaxonName("Capra hircus"), List.of(0, 1)),
            new Stock.Row(new TaxonName("Ovis aries"), List.of(1, 1))),
        stock.rows());
  }

  @Test
  void cardShowsReadingsAndWhyABoneIsKeptOut() {
    shelf.open(new AnimalId("T-1"));
    AnimalCard card = shelf.cardProperty().get().orElseThrow();
    assertEquals("Ovis aries", card.taxon());
    assertTrue(card.facts().contains(new AnimalCard.Fact("body mass", "41.5 kg")));
    assertEquals("Bd 31   GL 151.2", card.bones().get(0).readings());
    assertEquals("", card.bones().get(0).state());
    assertEquals("crushed: in no fit", card.bones().get(1).state());
  }

  private List<String> listed() {
    return shelf.listed().stream().map(a -> a.id().value()).toList();
  }

  private Path table(String text) throws IOException {
    return Files.writeString(folder.resolve("invented.csv"), text);
  }

  @Test
  void anOldNameFindsTheAnimalsAndSaysWhatTheirTaxonIsCalledNow() {
    TaxonTree renamed =
        HouseNames.of(
                List.of(
                    HouseTaxon.blank(new TaxonName("Ovis antiqua"), "invented")
                        .synonymOf(new TaxonName("Ovis aries"))))
            .on(TABLES.taxa())
            .value()
            .orElseThrow();
    ShelfViewModel names =
        new ShelfViewModel(
            new ShelfRoom(
                animals,
                animals,
                List::of,
                TABLES.protocol(),
                () -> renamed,
                Words.of("shelf", Locale.ENGLISH),
                Locale.ENGLISH),
            Runnable::run,
            Runnable::run);
    names.refresh();
    names.filterText("ovis antiq");
    assertFalse(names.listed().isEmpty());
    assertTrue(
        names.listed().stream()
            .allMatch(a -> a.taxon().equals(Optional.of(new TaxonName("Ovis aries")))));
    assertEquals("Ovis antiqua stands here as Ovis aries.", names.underOldNamesProperty().get());
    names.filterText("ovis aries");
    assertEquals("", names.underOldNamesProperty().get());
    names.filterText("sheep");
    assertFalse(names.listed().isEmpty(), "by its name in plain words");
  }
}
