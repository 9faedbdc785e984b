package org.comparanda.daybook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Two invented benches with five entries each, joined after three and after five. */
class DayBookTest {
  private final List<DayBookEntry> entries = new ArrayList<>();
  private String earlierHead;
  private String head;

  @BeforeEach
  void write() {
    write("a", 3, "as it was");
    write("b", 3, "as it was");
    earlierHead = join();
    write("a", 2, "as it was");
    write("b", 2, "as it was");
    head = join();
  }

  private void write(String bench, int count, String content) {
    for (int i = 0; i < count; i++) {
      entries.add(DayBookEntry.after(last(bench), bench, Instant.EPOCH, "reading " + i, content));
    }
  }

  private String join() {
    DayBookEntry joining =
        DayBook.joining(
            last(DayBook.JOINING),
            List.of(last("a").orElseThrow(), last("b").orElseThrow()),
            Instant.EPOCH);
    entries.add(joining);
    return joining.hash();
  }

  private Optional<DayBookEntry> last(String bench) {
    return entries.stream().filter(e -> e.bench().equals(bench)).reduce((one, next) -> next);
  }

  private static void assertBroken(Verdict verdict, String part) {
    String sentence = assertInstanceOf(Verdict.Broken.class, verdict).sentence();
    assertTrue(sentence.contains(part), sentence);
  }

  @Test
  void untouchedBookIsSoundForEveryHeadItGave() {
    assertEquals(new Verdict.Sound(12), new DayBook(entries).verify(head));
    assertEquals(new Verdict.Sound(12), new DayBook(entries).verify(earlierHead));
  }

  @Test
  void hashIsThatOfAnotherProgram() {
    // Python 3.11.7: hashlib.sha256(b"1:a1:1").hexdigest(); parts "a" and "1" with their lengths
    assertEquals(
        "4e05abd6911b81cca42657fbc9599aa8c54ec2edbae550401d8479871cb5ca0f",
        DayBookEntry.fingerprint(List.of("a", "1")));
  }

  @Test
  void changedByteIsFoundInEveryField() {
    for (int i = 0; i < entries.size(); i++) {
      DayBookEntry e = entries.get(i);
      for (DayBookEntry changed :
          List.of(
              new DayBookEntry(
                  e.bench(),
                  e.number(),
                  e.at().plusMillis(1),
                  e.subject(),
                  e.content(),
                  e.previous(),
                  e.hash()),
              new DayBookEntry(
                  e.bench(),
                  e.number(),
                  e.at(),
                  e.subject() + " ",
                  e.content(),
                  e.previous(),
                  e.hash()),
              new DayBookEntry(
                  e.bench(),
                  e.number(),
                  e.at(),
                  e.subject(),
                  e.content().replace('a', 'A'),
                  e.previous(),
                  e.hash()),
              new DayBookEntry(
                  e.bench(),
                  e.number(),
                  e.at(),
                  e.subject(),
                  e.content(),
                  e.previous(),
                  e.hash().replaceFirst("[0-9]", "f")))) {
        List<DayBookEntry> tampered = new ArrayList<>(entries);
        tampered.set(i, changed);
        assertInstanceOf(Verdict.Broken.class, new DayBook(tampered).verify(head), "entry " + i);
      }
    }
  }

  @Test
  void droppedEntryIsFound() {
    for (int i = 0; i < entries.size(); i++) {
      List<DayBookEntry> tampered = new ArrayList<>(entries);
      tampered.remove(i);
      assertInstanceOf(Verdict.Broken.class, new DayBook(tampered).verify(head), "entry " + i);
    }
  }

  @Test
  void cutTailOfOneBenchIsFound() {
    entries.remove(last("b").orElseThrow());
    assertBroken(new DayBook(entries).verify(head), "gone or another");
  }

  @Test
  void cutTailOfEverythingIsFoundByTheHead() {
    List<DayBookEntry> cut = entries.subList(0, 7);
    assertEquals(new Verdict.Sound(7), new DayBook(cut).verifyChains());
    assertBroken(new DayBook(cut).verify(head), "is not in this Day Book");
  }

  @Test
  void rebuiltChainIsFoundByTheHead() {
    entries.clear();
    write("a", 3, "otherwise");
    write("b", 3, "as it was");
    join();
    write("a", 2, "as it was");
    write("b", 2, "as it was");
    join();
    assertEquals(new Verdict.Sound(12), new DayBook(entries).verifyChains());
    assertBroken(new DayBook(entries).verify(head), "is not in this Day Book");
  }
}
