package org.comparanda.gui.sizedesk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.gui.control.plot.Series;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SizeDeskViewModelTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private final SizeDeskViewModel desk =
      new SizeDeskViewModel(room(InventedShelf.shelf()), Runnable::run, Runnable::run);

  static Room room(Shelf shelf) {
    return new Room(
        () -> shelf,
        TABLES,
        TABLES::taxa,
        Words.of("sizedesk", Locale.ENGLISH),
        Locale.ENGLISH,
        "Invented.",
        "0.1");
  }

  @BeforeEach
  void lookAtTheShelf() {
    desk.refresh();
  }

  @Test
  void freshDeskAsksForTheBodyFromTheBestMeasuredBone() {
    SizeAsk ask = desk.askProperty().get().orElseThrow();
    assertEquals("body_length", ask.predict());
    assertEquals("mandible.ML", ask.from());
    assertEquals(Set.of(InventedShelf.BROAD, InventedShelf.SLENDER), ask.taxa());
  }

  @Test
  void slenderSnoutOnTheBroadLineComesOutTooLongAndTheSecondLineSaysSo() {
    desk.choose(Set.of(InventedShelf.BROAD));
    desk.choices().compareWith(Beside.ALL);
    desk.readings().ownProperty().set("S-2");
    desk.readings().read();
    // By hand: S-2 has a jaw of 570 mm and a body of 5 · 570 · 0.98 = 2793 mm; a broad snout of
    // that jaw would be near 8 · 570 = 4560 mm.
    AnswerText answer = desk.shownProperty().get().answer();
    assertTrue(answer.sentence().startsWith("Body length 4."), answer.sentence());
    assertTrue(answer.sentence().contains("(95 % for one animal)"), answer.sentence());
    assertTrue(
        answer.cautions().stream()
            .anyMatch(c -> c.startsWith("What the choice does: with all 2 taxa it is")));
    assertTrue(
        answer.cautions().stream().anyMatch(c -> c.endsWith("Body length 2.79 m.")),
        answer.cautions().toString());
    assertEquals(2, desk.shownProperty().get().numbers().size());
  }

  @Test
  void ownAnimalIsInNoLineAndNoPicture() {
    desk.readings().ownProperty().set("B-3");
    desk.readings().read();
    List<Series> series = desk.shownProperty().get().figure().orElseThrow().series();
    assertFalse(
        series.stream().flatMap(s -> s.points().stream()).anyMatch(p -> p.id().equals("B-3")));
    assertEquals("11", desk.shownProperty().get().numbers().get(0).values().get(0));
  }

  @Test
  void valueOfAShelfAnimalIsFilledInAndChangesWithTheAnimal() {
    desk.readings().ownProperty().set("B-3");
    desk.readings().read();
    assertEquals("370", desk.readings().readingProperty().get());
    desk.readings().ownProperty().set("B-4");
    desk.readings().read();
    assertEquals("410", desk.readings().readingProperty().get());
    desk.readings().ownProperty().set("");
    desk.readings().read();
    assertEquals("", desk.readings().readingProperty().get());
  }

  @Test
  void boneBeyondTheShelfIsEstimatedAndSaysSo() {
    desk.choose(Set.of(InventedShelf.BROAD));
    desk.readings().readingProperty().set("663");
    desk.readings().read();
    // By hand: the longest broad jaw is 530 mm; 663 / 530 = 1.2509.
    assertTrue(
        desk.shownProperty()
            .get()
            .answer()
            .cautions()
            .get(0)
            .startsWith("This bone is 25 % longer"),
        desk.shownProperty().get().answer().cautions().toString());
    assertTrue(desk.shownProperty().get().figure().orElseThrow().bone().isPresent());
  }

  @Test
  void unreadableReadingIsRefusedWithTheReason() {
    for (String typed : List.of("abc", "-3", "0", "1.2.3", "1,234")) {
      desk.readings().readingProperty().set(typed);
      desk.readings().read();
      assertTrue(desk.readings().problemProperty().get().contains("\"" + typed + "\""), typed);
      assertTrue(desk.askProperty().get().orElseThrow().reading().isEmpty(), typed);
    }
  }

  @Test
  void unknownAnimalIsSaidAndNothingIsLeftOut() {
    desk.readings().ownProperty().set("Z-9");
    desk.readings().read();
    assertTrue(desk.readings().problemProperty().get().contains("\"Z-9\""));
    assertEquals("12", desk.shownProperty().get().numbers().get(0).values().get(0));
  }

  @Test
  void noTaxonGivesAReasonAndNoPicture() {
    desk.choose(Set.of());
    assertEquals("No taxon feeds this line.", desk.shownProperty().get().answer().sentence());
    assertTrue(desk.shownProperty().get().figure().isEmpty());
    assertEquals("", desk.shownProperty().get().methods());
  }

  @Test
  void quantityAskedFromItselfGivesAReason() {
    desk.askFor("mandible.ML", "mandible.ML");
    assertTrue(desk.shownProperty().get().figure().isEmpty());
    assertFalse(desk.shownProperty().get().answer().sentence().isBlank());
  }

  @Test
  void emptyShelfSaysWhatToDo() {
    SizeDeskViewModel empty =
        new SizeDeskViewModel(room(new Shelf(List.of())), Runnable::run, Runnable::run);
    empty.refresh();
    assertTrue(empty.askProperty().get().isEmpty());
  }

  @Test
  void methodsParagraphNamesSampleFormulaIntervalAndProgram() {
    desk.choices().correctBy(Correction.SMEARING);
    String methods = desk.shownProperty().get().methods();
    assertTrue(methods.contains("n = 12 animals"), methods);
    assertTrue(methods.contains("ln Body length (mm) = "), methods);
    assertTrue(methods.contains("95 % prediction intervals"), methods);
    assertTrue(methods.contains("Duan 1983"), methods);
    assertTrue(methods.contains("Comparanda 0.1"), methods);
    assertTrue(methods.endsWith("Invented."), methods);
  }

  @Test
  void majorAxisDescribesAndHasNoDiagnostics() {
    desk.choices().fitBy(LineMethod.SMA);
    desk.readings().readingProperty().set("400");
    desk.readings().read();
    SizeShown shown = desk.shownProperty().get();
    assertTrue(shown.diagnostics().isEmpty());
    assertTrue(shown.figure().orElseThrow().bands().isEmpty());
    assertTrue(
        shown.answer().sentence().endsWith("without an interval."), shown.answer().sentence());
  }

  @Test
  void tableHasOneRowPerAnimalAndAHeader() {
    List<String> rows = desk.shownProperty().get().table().lines().toList();
    assertEquals(13, rows.size());
    assertTrue(rows.get(0).startsWith("animal,taxon,drawer,mandible.ML [mm],body_length [mm],"));
    assertTrue(rows.get(1).startsWith("B-0,Crocodylus palustris,K 1,250.0,1900.0,"), rows.get(1));
  }

  @Test
  void axesChangeThePictureAndNotTheAnswer() {
    desk.readings().readingProperty().set("400");
    desk.readings().read();
    AnswerText before = desk.shownProperty().get().answer();
    desk.axesProperty().set(AxisScale.PLAIN);
    assertEquals(before, desk.shownProperty().get().answer());
    assertEquals(AxisScale.PLAIN, desk.shownProperty().get().figure().orElseThrow().x().scale());
  }

  @Test
  void anAnswerThatALaterQuestionOvertookIsDropped() {
    Deque<Runnable> waiting = new ArrayDeque<>();
    SizeDeskViewModel slow =
        new SizeDeskViewModel(room(InventedShelf.shelf()), waiting::add, Runnable::run);
    slow.refresh();
    waiting.remove().run();
    slow.choose(Set.of(InventedShelf.BROAD));
    Runnable first = waiting.remove();
    Runnable second = waiting.remove();
    second.run();
    first.run();
    assertEquals("8", slow.shownProperty().get().numbers().get(0).values().get(0));
    assertFalse(slow.busyProperty().get());
  }
}
