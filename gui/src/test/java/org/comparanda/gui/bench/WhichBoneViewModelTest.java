package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.WhichBone;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.Test;

/** The shipped key, walked as a person walks it: by numbers. */
class WhichBoneViewModelTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();

  private final List<ElementKey> found = new ArrayList<>();
  private final WhichBoneViewModel key = new WhichBoneViewModel(TABLES.whichBone(), found::add);

  @Test
  void everyPathEndsWithinSixQuestionsAtAnElementOrAStop() {
    List<Integer> lengths = new ArrayList<>();
    walk(new ArrayList<>(), lengths);
    assertTrue(lengths.size() > 60, lengths.size() + " paths");
    assertTrue(lengths.stream().allMatch(n -> n <= 6), lengths.toString());
  }

  /** Goes every way on from a path of choices; each end is looked at. */
  private void walk(List<Integer> path, List<Integer> lengths) {
    int choices = at(path).question().choices().size();
    for (int number = 1; number <= choices; number++) {
      List<Integer> next = new ArrayList<>(path);
      next.add(number);
      found.clear();
      WhichBoneViewModel.Step step = at(next);
      if (!found.isEmpty()) {
        assertTrue(TABLES.protocol().element(found.get(0)).isPresent(), found.toString());
        lengths.add(next.size());
      } else if (step.stop().isPresent()) {
        lengths.add(next.size());
      } else {
        walk(next, lengths);
      }
    }
  }

  private WhichBoneViewModel.Step at(List<Integer> path) {
    key.restart();
    path.forEach(key::choose);
    return key.stepProperty().get();
  }

  @Test
  void aBallOnANeckIsAFemur() {
    at(List.of(1, 1, 1));
    assertEquals(List.of(new ElementKey("femur")), found);
  }

  @Test
  void oneCanGoBackAlsoFromAStop() {
    assertEquals(WhichBone.Reason.MAY_BE_HUMAN, at(List.of(7)).stop().orElseThrow().reason());
    key.back();
    assertEquals("shape", key.stepProperty().get().question().id());
    assertTrue(key.stepProperty().get().stop().isEmpty());
    key.back();
    assertEquals("shape", key.stepProperty().get().question().id());
  }

  @Test
  void aNumberWithoutAChoiceDoesNothing() {
    key.choose(9);
    key.choose(0);
    assertEquals(1, key.stepProperty().get().number());
  }
}
