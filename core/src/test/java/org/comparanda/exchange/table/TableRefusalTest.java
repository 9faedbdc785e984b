package org.comparanda.exchange.table;

import static org.comparanda.exchange.table.TableFixture.lines;
import static org.comparanda.exchange.table.TableFixture.reader;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.reference.Shelf;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables that are refused, each with row, column, value and remedy. All values are invented. */
class TableRefusalTest {
  private static final TableOptions PLAIN = TableOptions.withDefaults();

  @TempDir Path folder;
  private TableFixture files;

  @BeforeEach
  void files() {
    files = new TableFixture(folder);
  }

  /** Line ends are written {@code /}, cells parted by {@code ;}. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          letter in a number   | taxon;element;GL/Ovis aries;humerus;14O    | 2 | GL      | 14O      | not a number
          infinite number      | taxon;element;GL/Ovis aries;humerus;1e999  | 2 | GL      | 1e999    | not a number
          not a number word    | taxon;element;GL/Ovis aries;humerus;NaN    | 2 | GL      | NaN      | not a number
          zero                 | taxon;element;GL/Ovis aries;humerus;0      | 2 | GL      | 0        | above zero
          below zero           | taxon;element;GL/Ovis aries;humerus;-140   | 2 | GL      | -140     | above zero
          unknown side         | taxon;element;side;GL/Ovis aries;humerus;links;140 | 2 | side | links | not a word
          unknown portion      | taxon;element;portion;GL/Ovis aries;humerus;top;140 | 2 | portion | top | not a word
          unknown flag         | taxon;element;flags;GL/Ovis aries;humerus;cast,odd;140 | 2 | flags | cast,odd | not a word
          unknown element      | taxon;element;GL/Ovis aries;humerous;140   | 2 | element | humerous | nearest is humerus
          unknown taxon        | taxon;element;GL/Ovis arie;humerus;140     | 2 | taxon   | Ovis arie | nearest is Ovis aries
          no measure of bone   | taxon;element;Bd/Ovis aries;femur;30       | 2 | Bd      | 30       | isn't measured on the element
          unit unheard of      | taxon;element;GL [ell]/Ovis aries;humerus;3 | 1 | GL [ell] | ell    | not a unit
          """)
  void oneWrongCellIsNamedWithRowColumnValueAndRemedy(
      String what, String text, long row, String column, String value, String words) {
    ProblemReport report = files.refused(PLAIN, text.replace('/', '\n'));
    TableProblem problem = report.problems().get(0);
    assertAll(
        () -> assertEquals(1, report.count(), report.lines().toString()),
        () -> assertEquals(Optional.of(row), problem.row()),
        () -> assertEquals(Optional.of(column), problem.column()),
        () -> assertEquals(Optional.of(value), problem.value()),
        () -> assertTrue(problem.sentence().contains(words), problem.sentence()),
        () -> assertTrue(!problem.remedy().isBlank(), "a remedy"));
  }

  @Test
  void everyProblemIsListedNotOnlyTheFirst() {
    ProblemReport report =
        files.refused(
            PLAIN,
            lines(
                "animal,taxon,element,GL,Bdd",
                "1,Ovis aries,humerus,x,3",
                "2,Ovis aries,humerus,140",
                "3,Ovis aries,humerus,-1,3",
                "4,Ovis aries,humerus,140,3,9"));
    assertEquals(5, report.count(), report.lines().toString());
  }

  @Test
  void anUnknownHeaderIsRefusedWithTheNearestKnownCode() {
    ProblemReport report =
        files.refused(PLAIN, "taxon,element,GL,bdd\nOvis aries,humerus,140,30\n");
    assertTrue(
        report.problems().get(0).sentence().contains("The nearest is Bd."),
        report.lines().toString());
  }

  @Test
  void rowsLongerOrShorterThanTheHeaderAreRefused() {
    ProblemReport report =
        files.refused(PLAIN, "taxon,element,GL\nOvis aries,humerus\nOvis aries,humerus,140,5\n");
    assertAll(
        () -> assertEquals(Optional.of(2L), report.problems().get(0).row()),
        () -> assertEquals(Optional.of(3L), report.problems().get(1).row()));
  }

  @Test
  void anUnclosedQuoteIsRefusedAtItsLine() {
    ProblemReport report =
        files.refused(PLAIN, "taxon,element,GL\nOvis aries,humerus,140\n\"Ovis aries,humerus,9\n");
    assertAll(
        () -> assertEquals(Optional.of(3L), report.problems().get(0).row()),
        () -> assertTrue(report.problems().get(0).message().contains("never closed")));
  }

  @Test
  void textThatIsNotUtf8IsRefusedAtItsLine() {
    byte[] latin =
        "taxon,element,GL,remarks\nOvis aries,humerus,140,caf\u00e9\n"
            .getBytes(StandardCharsets.ISO_8859_1);
    ProblemReport report = files.refused(PLAIN, files.file(latin));
    assertAll(
        () -> assertEquals(Optional.of(2L), report.problems().get(0).row()),
        () -> assertTrue(report.problems().get(0).message().contains("UTF-8")));
  }

  @Test
  void emptyBinaryAndMissingFilesAreRefused() {
    assertAll(
        () -> assertEquals(1, files.refused(PLAIN, "").count()),
        () -> assertEquals(1, files.refused(PLAIN, "\n\n \n").count()),
        () ->
            assertTrue(
                files
                    .refused(PLAIN, files.file(new byte[] {'G', 'I', 'F', 0, 0, 1}))
                    .problems()
                    .get(0)
                    .message()
                    .contains("binary")),
        () ->
            assertTrue(
                files
                    .refused(PLAIN, folder.resolve("nowhere.csv"))
                    .problems()
                    .get(0)
                    .message()
                    .contains("no such file")),
        () -> assertEquals(1, files.refused(PLAIN, folder).count()));
  }

  @Test
  void aTableWithoutRowsOrMeasurementsIsRefused() {
    assertAll(
        () -> assertEquals(1, files.refused(PLAIN, "taxon,element,GL\n").count()),
        () -> assertEquals(1, files.refused(PLAIN, "taxon,element\nOvis aries,humerus\n").count()),
        () ->
            assertEquals(
                1, files.refused(PLAIN, "taxon,element,GL\nOvis aries,humerus,NA\n").count()));
  }

  @Test
  void oneAnimalWithTwoTaxaIsRefused() {
    ProblemReport report =
        files.refused(
            PLAIN, "animal,taxon,element,GL\n7,Ovis aries,humerus,140\n7,Capra hircus,femur,150\n");
    assertAll(
        () -> assertEquals(1, report.count()),
        () -> assertEquals(Optional.of(3L), report.problems().get(0).row()),
        () -> assertEquals(Optional.of("Capra hircus"), report.problems().get(0).value()));
  }

  @Test
  void anAnimalThatTheCollectionHasUnderAnotherTaxonIsRefused() {
    ProblemReport report =
        reader(PLAIN)
            .cardsFor(
                TableFixture.sixAnimals(),
                files.file("animal,taxon,element,GL\nKV-1,Capra hircus,humerus,140\n"))
            .fold(r -> new ProblemReport("none", java.util.List.of(), 0), r -> r);
    assertTrue(
        report.lines().toString().contains("KV-1 is Ovis aries in the collection"),
        report.lines().toString());
  }

  @Test
  void commasBeforeExactlyThreeDecimalsAreRefusedUntilThePersonSaysWhich() {
    ProblemReport report = files.refused(PLAIN, "taxon;element;GL\nOvis aries;humerus;140,125\n");
    assertAll(
        () -> assertEquals(1, report.count()),
        () -> assertTrue(report.problems().get(0).remedy().contains("--decimal comma")));
  }

  @Test
  void aColumnInInchesIsRefusedAgainstTheShelfUntilThePersonSaysWhich() {
    String text = "animal,taxon,element,GL\nA,Ovis aries,humerus,5.1\nB,Ovis aries,humerus,5.3\n";
    assertAll(
        () -> assertTrue(looksLike(PLAIN, text).contains("--unit GL=in")),
        () -> assertEquals("", looksLike(PLAIN.withUnit("GL", LengthUnit.INCH), text)),
        () ->
            assertEquals(
                "", looksLike(PLAIN.withUnitDoubt(TableOptions.UnitDoubt.TAKE_AS_IS), text)));
  }

  @Test
  void aColumnInCentimetresIsRefusedAgainstTheProtocolsRange() {
    String text = "taxon,element,GL\nOvis aries,humerus,14.1\nOvis aries,humerus,15.2\n";
    assertTrue(files.refused(PLAIN, text).problems().get(0).remedy().contains("--unit GL=cm"));
  }

  @Test
  void aColumnOutOfScaleWithItsSiblingsIsRefused() {
    // GL 155 mm is usual; a Bd of 4.1 "cm" would be 41 mm, and 4.1 in is beyond the range
    String text =
        lines(
            "taxon,element,GL,Bd",
            "Ovis aries,humerus,150,4.1",
            "Ovis aries,humerus,160,4.3",
            "Ovis aries,humerus,155,4.2");
    assertTrue(files.refused(PLAIN, text).problems().get(0).remedy().contains("--unit Bd=cm"));
  }

  @Test
  void readingStopsWhenAsked() {
    ReadingProgress stop =
        new ReadingProgress() {
          @Override
          public void read(long bytes, long ofBytes) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    Path table = files.file("taxon,element,GL\nOvis aries,humerus,140\n");
    assertThrows(CancellationException.class, () -> reader(PLAIN).watchedBy(stop).shelf(table));
  }

  @Test
  void twoHeadersForOneColumnAreRefused() {
    ProblemReport report =
        files.refused(
            PLAIN.withAs(Map.of("GL", "length")),
            "taxon,element,length,length\nOvis aries,humerus,140,141\n");
    assertEquals(1, report.count(), report.lines().toString());
  }

  private String looksLike(TableOptions options, String text) {
    Shelf shelf = TableFixture.sixAnimals();
    return reader(options)
        .cardsFor(shelf, files.file(text))
        .fold(r -> "", report -> report.problems().get(0).remedy());
  }

  @Test
  void aHeaderThatStandsTwiceIsOneProblem() {
    ProblemReport report =
        files.refused(
            PLAIN,
            lines(
                "taxon;element;GL;Bd",
                "Ovis aries;humerus;150;30",
                "taxon;element;GL;Bd",
                "Ovis aries;humerus;151;31"));
    assertEquals(1, report.count(), report.lines().toString());
    assertEquals("the header stands here once more", report.problems().get(0).message());
    assertEquals(Optional.of(3L), report.problems().get(0).row());
  }

  @Test
  void textInTwoBytesALetterIsNamedAsSuch() {
    byte[] text = "taxon;element;GL\nOvis aries;humerus;150\n".getBytes(StandardCharsets.UTF_16);
    assertEquals(
        "the text is UTF-16, not UTF-8",
        files.refused(PLAIN, files.file(text)).problems().get(0).message());
  }
}
