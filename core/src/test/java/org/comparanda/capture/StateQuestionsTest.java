package org.comparanda.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.GrowingEnd;
import org.comparanda.bone.Portion;
import org.junit.jupiter.api.Test;

class StateQuestionsTest {
  private static final List<GrowingEnd> TWO = List.of(GrowingEnd.PROXIMAL, GrowingEnd.DISTAL);

  @Test
  void enterAloneMeansThatAllIsFine() {
    StateQuestions done = after(StateQuestions.of(TWO, Portion.WHOLE), "\n");
    assertEquals(StateQuestions.Stage.DONE, done.stage());
    assertEquals(new BoneState(Fusion.FUSED, Fusion.FUSED, Set.of()), done.state());
  }

  @Test
  void anEndThatIsMissingCantBeSeen() {
    BoneState state = after(StateQuestions.of(TWO, Portion.DISTAL), "\n").state();
    assertEquals(new BoneState(Fusion.CANT_SEE, Fusion.FUSED, Set.of()), state);
  }

  @Test
  void oneDigitAnswersForEachEnd() {
    BoneState state = after(StateQuestions.of(TWO, Portion.WHOLE), "21\n").state();
    assertEquals(new BoneState(Fusion.FUSING, Fusion.UNFUSED, Set.of()), state);
  }

  @Test
  void anElementThatGrowsAtItsLowerEndOnlyKeepsTheAnswerThere() {
    List<GrowingEnd> lower = List.of(GrowingEnd.DISTAL); // a metacarpal
    assertEquals(
        new BoneState(Fusion.CANT_SEE, Fusion.UNFUSED, Set.of()),
        after(StateQuestions.of(lower, Portion.WHOLE), "1\n").state());
    assertEquals(
        new BoneState(Fusion.CANT_SEE, Fusion.FUSED, Set.of()),
        after(StateQuestions.of(lower, Portion.DISTAL), "\n").state());
  }

  @Test
  void itSaysWhetherAllIsFineStill() {
    StateQuestions first = StateQuestions.of(TWO, Portion.WHOLE);
    assertTrue(first.allFine());
    assertTrue(after(first, "33").allFine());
    assertFalse(after(first, "333").allFine());
  }

  @Test
  void digitsAfterTheEndsSayWhatHappenedAndTakeItBack() {
    BoneState state = after(StateQuestions.of(TWO, Portion.WHOLE), "33640\n").state();
    assertEquals(Set.of(Flag.BURNT, Flag.PATHOLOGICAL, Flag.CUT), state.flags());
    assertEquals(
        Set.of(), after(StateQuestions.of(List.of(), Portion.WHOLE), "66\n").state().flags());
  }

  @Test
  void slashBeginsAnew() {
    assertEquals(
        StateQuestions.of(TWO, Portion.WHOLE),
        after(StateQuestions.of(TWO, Portion.WHOLE), "134/"));
  }

  @Test
  void whatAnswersNothingChangesNothing() {
    StateQuestions first = StateQuestions.of(TWO, Portion.WHOLE);
    assertEquals(first, after(first, "x60,"));
  }

  private static StateQuestions after(StateQuestions first, String keys) {
    StateQuestions now = first;
    for (int i = 0; i < keys.length(); i++) {
      now = now.typed(keys.charAt(i));
    }
    return now;
  }
}
