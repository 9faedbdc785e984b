package org.comparanda.gui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.gui.caliper.LessonViewModel;
import org.comparanda.gui.text.Words;
import org.comparanda.gui.welcome.WelcomeViewModel;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who, which collection, which caliper: asked once, then remembered. */
class FirstStartTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder;
  private final List<String> done = new ArrayList<>();
  private Doorway doors;
  private WelcomeViewModel welcome;

  @BeforeEach
  void start() {
    doors = new Doorway(folder, ReferenceTables.shipped(), CLOCK, new RememberedThings(folder));
    welcome =
        new WelcomeViewModel(
            doors,
            CLOCK,
            Words.of("welcome", Locale.ENGLISH),
            Words.of("caliper", Locale.ENGLISH),
            name -> {
              doors.sits(name);
              done.add(name);
            });
  }

  @AfterEach
  void close() {
    doors.close();
  }

  private void restart() {
    doors.close();
    start();
  }

  @Test
  void aFirstStartOpensNothingByItself() {
    assertTrue(doors.asBefore().value().isEmpty());
    assertTrue(doors.collection().isEmpty());
  }

  @Test
  void withoutANameItGoesNowhere() {
    welcome.named();
    assertEquals(WelcomeViewModel.Step.WHO, welcome.stepProperty().get());
    assertEquals(
        "A name is needed, whatever people call you here.", welcome.messageProperty().get());
  }

  @Test
  void threeStepsLeadToANewCollectionWithPersonAndCaliperAndAreRemembered() {
    welcome.nameProperty().set(" Invented Volunteer ");
    welcome.named();
    welcome.create(folder.resolve("our-room"));
    assertEquals(WelcomeViewModel.Step.CALIPER, welcome.stepProperty().get());
    LessonViewModel lesson = welcome.lesson().orElseThrow();
    List.of("12.34\r", "23.41\r", "34.12\r", "41.23\r", "13.26\r").forEach(lesson::burst);
    welcome.learned(lesson.save().orElseThrow());
    assertEquals(List.of("Invented Volunteer"), done);
    restart();
    assertTrue(doors.asBefore().value().isPresent());
    var collection = doors.collection().orElseThrow();
    assertEquals(folder.resolve("our-room.comparanda"), collection.file());
    assertEquals(1, collection.caliperCards().all().size());
    assertEquals(
        collection.caliperCards().all().get(0).name(),
        new RememberedThings(folder).recall("caliper").orElse(""),
        "it lies in the hand at once");
    assertEquals(
        Optional.of("invented-volunteer"),
        new RememberedThings(folder).recall(RememberedThings.PERSON));
    assertEquals(
        List.of(new Person(new PersonId("invented-volunteer"), "Invented Volunteer")),
        collection.people().all());
  }

  @Test
  void aCollectionThatCantBeOpenedIsSaidAndTheQuestionStays() {
    welcome.nameProperty().set("Invented Volunteer");
    welcome.named();
    welcome.open(folder.resolve("none.comparanda"));
    assertEquals(WelcomeViewModel.Step.COLLECTION, welcome.stepProperty().get());
    assertTrue(
        welcome.messageProperty().get().contains("none.comparanda"),
        welcome.messageProperty().get());
  }

  @Test
  void thePersonOfThatNameIsTheSameAndAnotherGetsAnIdOfTheirOwn() {
    welcome.create(folder.resolve("our-room"));
    doors.sits("Ann");
    doors.sits("ann");
    doors.sits("Ann!");
    assertEquals(
        List.of("ann", "ann-2"),
        doors.collection().orElseThrow().people().all().stream().map(p -> p.id().value()).toList());
  }

  @Test
  void theDemoIsMadeAndOpenedAgain() {
    welcome.nameProperty().set("Invented Volunteer");
    welcome.named();
    welcome.demo();
    welcome.finish();
    restart();
    assertTrue(doors.asBefore().value().isPresent());
    assertEquals(Simulated.SIMULATED, Simulated.of(doors.collection().orElseThrow()));
  }
}
