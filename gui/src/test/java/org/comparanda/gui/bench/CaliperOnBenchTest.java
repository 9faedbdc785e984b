package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import org.comparanda.capture.CaliperCard;
import org.comparanda.capture.FieldState;
import org.comparanda.capture.NamedKey;
import org.comparanda.gui.caliper.LessonViewModel;
import org.comparanda.gui.capture.MapMemory;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Reading;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A caliper that types: learned, chosen, named in its readings, heard as its card says. */
class CaliperOnBenchTest {
  private static final List<String> FIVE =
      List.of("12,34\r", "23,41\r", "34,12\r", "41,23\r", "13,26\r");

  @TempDir private Path folder;
  private final MapMemory memory = new MapMemory(new HashMap<>());
  private BareBench room;
  private BenchViewModel bench;

  @BeforeEach
  void open() {
    room = BareBench.in(folder, memory);
    bench = new BenchViewModel(room.place());
    bench.choose(BareBench.TRAY);
    bench.state().typed('\n');
  }

  @AfterEach
  void close() {
    room.close();
  }

  private void keys(String characters) {
    for (int i = 0; i < characters.length(); i++) {
      char c = characters.charAt(i);
      if (c == '\n') {
        bench.readings().pressed(NamedKey.ENTER);
      } else {
        bench.readings().typed(c);
      }
    }
  }

  private CaliperCard learn(String reach) {
    keys("08\n1\n"); // no card yet: the first choice is a new one
    assertTrue(bench.caliper().learningProperty().get());
    LessonViewModel lesson = bench.caliper().lesson();
    lesson.reachProperty().set(reach);
    FIVE.forEach(lesson::burst);
    CaliperCard card = lesson.save().orElseThrow();
    bench.caliper().take(Optional.of(card));
    return card;
  }

  private List<Reading> log() {
    return room.collection().readings().of(new BoneId("N-1"));
  }

  @Test
  void fiveTestReadingsMakeACardAndItsReadingsNameIt() {
    CaliperCard card = learn("150");
    assertEquals(',', card.decimalMark());
    assertEquals(2, card.decimals());
    assertEquals(Optional.of(card), room.collection().caliperCards().card("Caliper 1"));
    bench.readings().burst("15,80\r");
    assertEquals(Optional.of("Caliper 1"), log().get(0).instrument());
    assertEquals(15.8, bench.readings().values().get(new MeasurementCode("SD")), 0.0);
    keys("32.7\n");
    assertEquals(Optional.empty(), log().get(1).instrument());
  }

  @Test
  void theOtherDecimalMarkIsRefusedAndNothingIsTaken() {
    learn("150");
    bench.readings().burst("15.80\r");
    assertTrue(bench.readings().messageProperty().get().contains("another decimal mark"));
    assertEquals(List.of(), log());
  }

  @Test
  void aMeasureLongerThanTheJawsOpenWaitsWithAWarningAndEnterTakesIt() {
    learn("30");
    keys("15.8\n");
    bench.readings().burst("32,70\r");
    assertEquals(1, log().size());
    assertTrue(
        bench.readings().warningsProperty().get().stream()
            .anyMatch(w -> w.sentence().startsWith("The caliper in hand opens to 30 mm")));
    assertEquals(FieldState.Showing.FIELD, bench.readings().fieldProperty().get().showing());
    keys("\n");
    assertEquals(2, log().size());
    assertEquals(Optional.of("Caliper 1"), log().get(1).instrument());
  }

  @Test
  void anOldGaugeCheckIsSaidAndACheckTodayEndsIt() {
    learn("150");
    assertTrue(bench.errands().standingProperty().get().contains("never checked"));
    CaliperCard old =
        bench
            .caliper()
            .inHandProperty()
            .get()
            .orElseThrow()
            .withLastCheck(LocalDate.of(2026, 7, 1));
    bench.caliper().take(Optional.of(old));
    assertTrue(bench.errands().standingProperty().get().contains("147 days ago"));
    keys("08\n3\n"); // 0 hand, 1 the card, 2 a new one, 3 checked today
    assertEquals("Caliper: Caliper 1.", bench.errands().standingProperty().get());
    assertEquals(
        Optional.of(LocalDate.of(2026, 11, 25)),
        room.collection().caliperCards().card("Caliper 1").orElseThrow().lastCheck());
  }

  @Test
  void theCaliperInHandIsRememberedAndPutDownByZero() {
    learn("150");
    room.close();
    open();
    assertEquals(
        Optional.of("Caliper 1"), bench.caliper().inHandProperty().get().map(CaliperCard::name));
    keys("08\n0\n");
    assertTrue(bench.caliper().inHandProperty().get().isEmpty());
    assertFalse(bench.errands().standingProperty().get().contains("Caliper"));
  }

  @Test
  void aTakenNameOrAReachThatIsNoLengthStoresNothing() {
    learn("150");
    LessonViewModel lesson = bench.caliper().lesson();
    FIVE.forEach(lesson::burst);
    lesson.nameProperty().set("Caliper 1");
    assertTrue(lesson.save().isEmpty());
    assertTrue(lesson.messageProperty().get().contains("already"));
    lesson.nameProperty().set("Caliper 2");
    lesson.reachProperty().set("wide");
    assertTrue(lesson.save().isEmpty());
    assertEquals(1, room.collection().caliperCards().all().size());
  }

  @Test
  void aHandIsNoCaliperAndFiveReadingsOfTwoMarksTeachNothing() {
    LessonViewModel lesson = bench.caliper().lesson();
    lesson.hand();
    assertTrue(lesson.messageProperty().get().startsWith("That came as slowly"));
    List.of("12,34\r", "23.41\r", "34,12\r", "41,23\r", "13,24\r").forEach(lesson::burst);
    assertTrue(lesson.learnedProperty().get().isEmpty());
    assertEquals(
        "Point and comma both came. Take the five test readings again.",
        lesson.messageProperty().get());
  }
}
