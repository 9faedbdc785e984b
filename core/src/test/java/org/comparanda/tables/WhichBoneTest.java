package org.comparanda.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.WhichBone;
import org.comparanda.bone.WhichBone.Choice;
import org.comparanda.bone.WhichBone.Found;
import org.comparanda.bone.WhichBone.Question;
import org.comparanda.bone.WhichBone.Stop;
import org.junit.jupiter.api.Test;

class WhichBoneTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final WhichBone KEY = TABLES.whichBone();

  @Test
  void noPathAsksMoreThanSixQuestions() {
    assertTrue(longest(KEY.firstQuestion()) <= 6);
  }

  @Test
  void everyQuestionIsReached() {
    Set<String> reached = new HashSet<>();
    reach(KEY.firstQuestion(), reached);
    assertEquals(KEY.questions().size(), reached.size());
  }

  @Test
  void everyLeafIsAnElementOfTheProtocolOrAStopWithASentence() {
    for (Question question : KEY.questions()) {
      for (Choice choice : question.choices()) {
        if (choice.next() instanceof Found found) {
          assertTrue(TABLES.protocol().element(found.element()).isPresent());
        } else if (choice.next() instanceof Stop stop) {
          assertTrue(stop.sentence().length() > 20, stop.sentence());
        }
        choice.shows().ifPresent(shown -> assertTrue(TABLES.protocol().element(shown).isPresent()));
      }
    }
  }

  @Test
  void everyQuestionLetsAPersonSayThatTheyCannotTell() {
    for (Question question : KEY.questions()) {
      assertTrue(
          question.choices().stream()
              .anyMatch(c -> c.next() instanceof Stop s && s.reason() == WhichBone.Reason.ASK),
          question.id());
    }
  }

  @Test
  void everyStopForPossiblyHumanBonesEndsWithTheSameWords() {
    List<Stop> stops =
        KEY.questions().stream()
            .flatMap(q -> q.choices().stream())
            .filter(c -> c.next() instanceof Stop)
            .map(c -> (Stop) c.next())
            .filter(s -> s.reason() == WhichBone.Reason.MAY_BE_HUMAN)
            .toList();
    assertTrue(stops.size() >= 5);
    for (Stop stop : stops) {
      assertTrue(stop.sentence().endsWith("If this could be human, press STOP."), stop.sentence());
    }
  }

  @Test
  void theElementsWithMeasurementsAreAllFound() {
    Set<ElementKey> found = new HashSet<>();
    KEY.questions().stream()
        .flatMap(q -> q.choices().stream())
        .forEach(
            c -> {
              if (c.next() instanceof Found f) {
                found.add(f.element());
              }
            });
    TABLES.protocol().measurements().stream()
        .filter(m -> !m.element().value().equals("live-head")) // no bone: a head with its skin
        .forEach(m -> assertTrue(found.contains(m.element()), m.element().value()));
  }

  @Test
  void aChoiceThatLeadsNowhereIsRefused() {
    Question lost =
        new Question(
            "shape",
            "Which?",
            "",
            List.of(new Choice("this", java.util.Optional.empty(), new WhichBone.Ask("gone"))));
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> new WhichBone("shape", List.of(lost)));
    assertEquals("There is no question \"gone\".", refused.getMessage());
  }

  private static int longest(Question question) {
    return 1
        + question.choices().stream()
            .flatMap(c -> KEY.after(c).stream())
            .mapToInt(WhichBoneTest::longest)
            .max()
            .orElse(0);
  }

  private static void reach(Question question, Set<String> reached) {
    reached.add(question.id());
    question.choices().stream()
        .flatMap(c -> KEY.after(c).stream())
        .forEach(next -> reach(next, reached));
  }
}
