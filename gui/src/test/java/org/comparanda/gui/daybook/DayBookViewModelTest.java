package org.comparanda.gui.daybook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.comparanda.daybook.Change;
import org.comparanda.daybook.DayBookEntry;
import org.comparanda.daybook.DayBookFilter;
import org.comparanda.daybook.DayBookPage;
import org.comparanda.daybook.DayBookPages;
import org.comparanda.gui.text.Words;
import org.comparanda.house.HouseRule;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Lot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Day Book without a window, on a real file. All rows are invented. */
class DayBookViewModelTest {
  private static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");
  private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
  private static final Person ANN = new Person(new PersonId("ann"), "Invented Ann");

  @TempDir Path folder;
  private Path file;
  private Collection collection;
  private DayBookViewModel model;

  @BeforeEach
  void someEntries() {
    file = folder.resolve("c.comparanda");
    collection = Collection.create(file, CLOCK);
    collection.people().save(ANN);
    collection.people().save(new Person(new PersonId("ben"), "Invented Ben"));
    collection.houseRules().set(new HouseRule(RuleName.PRIORS, "shelf", ANN.id(), NOW, ""));
    collection.by(new PersonId("ben")).lots().save(Lot.named("Lot 7"));
    open();
  }

  private void open() {
    model = model(collection.dayBookPages());
    model.refresh();
  }

  private DayBookViewModel model(DayBookPages pages) {
    return new DayBookViewModel(
        new DayBookRoom(
            pages,
            collection::dayBookHead,
            collection::verifyDayBook,
            collection.people(),
            Words.of("daybook", Locale.ENGLISH),
            Locale.ENGLISH,
            CLOCK),
        Runnable::run,
        Runnable::run);
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private List<String> what() {
    return model.lines().stream().map(EntryLine::what).toList();
  }

  @Test
  void newestStandsFirstWithThePersonsName() {
    assertEquals(List.of("lot Lot 7", "rule 1", "person ben", "person ann"), what());
    assertEquals(
        List.of("Invented Ben", "Invented Ann", "", ""),
        model.lines().stream().map(EntryLine::who).toList());
    assertEquals("1 to 4 of 4, the newest first", model.placeProperty().get());
    assertEquals(collection.dayBookHead(), model.headProperty().get());
  }

  @Test
  void personKindAndTextNarrowTheBook() {
    model.ofPerson(Optional.of(ANN));
    assertEquals(List.of("rule 1"), what());
    model.ofPerson(Optional.empty());
    model.ofKind("person");
    assertEquals(List.of("person ben", "person ann"), what());
    model.withText("BEN");
    assertEquals(List.of("person ben"), what());
    model.withText("nothing like it");
    assertTrue(model.placeProperty().get().startsWith("No entry here."));
  }

  @Test
  void blankedPersonIsShownAsSuch() {
    collection.people().save(new Person(new PersonId("ben"), ""));
    model.refresh();
    assertEquals("ben (name blanked)", model.lines().get(1).who());
    assertEquals("ben (name blanked)", model.person(model.people().get(1)));
  }

  @Test
  void entryOpensWithItsRow() {
    model.open(model.lines().get(1));
    assertEquals("shelf", model.openProperty().get().orElseThrow().row().get("content"));
  }

  @Test
  void headThatWasPastedIsProved() {
    String head = model.headProperty().get();
    model.proof().typedProperty().set("  " + head.substring(0, 30) + "\n" + head.substring(30));
    model.proof().prove();
    assertEquals(ProofViewModel.State.HOLDS, model.proof().stateProperty().get());
    assertEquals(1.0, model.proof().doneProperty().get());
    assertTrue(model.proof().verdictProperty().get().startsWith("Proved. Up to this head"));
  }

  @Test
  void whatIsNoHashIsRefusedWithoutLooking() {
    model.proof().typedProperty().set("12ab");
    model.proof().prove();
    assertEquals(ProofViewModel.State.NO_HASH, model.proof().stateProperty().get());
    assertTrue(model.proof().verdictProperty().get().contains("64 characters"));
    model.proof().typedProperty().set("");
    model.proof().prove();
    assertEquals(ProofViewModel.State.HOLDS, model.proof().stateProperty().get());
    assertTrue(model.proof().verdictProperty().get().contains("can be told only with a head"));
  }

  private String after(String tampering) throws Exception {
    String head = model.headProperty().get();
    collection.close();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute("drop trigger day_book_never_changed");
      statement.execute("drop trigger day_book_never_removed");
      statement.executeUpdate(tampering);
    }
    collection = Collection.open(file, CLOCK);
    open();
    model.proof().typedProperty().set(head);
    model.proof().prove();
    assertEquals(ProofViewModel.State.BROKEN, model.proof().stateProperty().get());
    return model.proof().verdictProperty().get();
  }

  @Test
  void changedByteIsSaidInWords() throws Exception {
    assertTrue(
        after("update day_book set subject = 'rule 7' where subject = 'rule 1'")
            .startsWith("Not proved: a byte was changed. Entry 3 of \"bench 1\""));
  }

  @Test
  void droppedRowIsSaidInWords() throws Exception {
    assertTrue(
        after("delete from day_book where subject = 'person ben'")
            .startsWith("Not proved: an entry was dropped or changed. Entry 3 of \"bench 1\""));
  }

  @Test
  void cutTailIsSaidInWords() throws Exception {
    String said = after("delete from day_book where bench = 'day' or subject like 'lot%'");
    assertTrue(said.startsWith("Not proved: "), said);
    assertTrue(said.contains("tail"), said);
  }

  @Test
  void rowChangedBesideTheBookIsSaidInWords() throws Exception {
    assertEquals(
        "Not proved: a row is gone or was changed beside the book: lot Lot 7. Nothing was changed"
            + " by this proof. Keep this file as it is and compare it with the latest backup.",
        after("update lot set remarks = 'x'"));
  }

  /** A hundred thousand invented entries, made when they are asked for. */
  private static final class LongBook implements DayBookPages {
    private static final long ALL = 100_000;
    private final List<Integer> asked = new ArrayList<>();

    @Override
    public DayBookPage page(DayBookFilter filter, long from, int most) {
      asked.add(most);
      return new DayBookPage(
          LongStream.range(from, Math.min(ALL, from + most))
              .mapToObj(i -> new DayBookPage.Line(entry(ALL - i), "ann", ""))
              .toList(),
          ALL);
    }

    private static DayBookEntry entry(long number) {
      Change change = new Change("", "ann", "");
      return new DayBookEntry(
          "bench 1", number, NOW, "reading " + number, change.content(), "", "");
    }

    @Override
    public List<String> kinds() {
      return List.of("reading");
    }

    @Override
    public Set<String> blanked() {
      return Set.of();
    }

    @Override
    public Map<String, String> rowNow(String subject) {
      return Map.of();
    }
  }

  @Test
  void hundredThousandEntriesAreReadPageByPage() {
    LongBook book = new LongBook();
    model = model(book);
    model.refresh();
    assertEquals("1 to 100 of 100,000, the newest first", model.placeProperty().get());
    model.oldest();
    assertEquals("reading 1", model.lines().get(99).what());
    model.older();
    assertEquals("99,901 to 100,000 of 100,000, the newest first", model.placeProperty().get());
    model.newer();
    assertEquals("reading 200", model.lines().get(0).what());
    model.newest();
    assertEquals("reading 100000", model.lines().get(0).what());
    assertEquals(Set.of(DayBookViewModel.PAGE), Set.copyOf(book.asked));
  }

  @Test
  void ofSeveralQuestionsAskedQuicklyOnlyTheLastIsRead() {
    List<Runnable> waiting = new ArrayList<>();
    LongBook book = new LongBook();
    DayBookViewModel slow =
        new DayBookViewModel(
            new DayBookRoom(
                book,
                collection::dayBookHead,
                collection::verifyDayBook,
                collection.people(),
                Words.of("daybook", Locale.ENGLISH),
                Locale.ENGLISH,
                CLOCK),
            waiting::add,
            Runnable::run);
    slow.withText("K");
    slow.withText("K-");
    slow.withText("K-1");
    waiting.forEach(Runnable::run);
    assertEquals(1, book.asked.size());
  }
}
