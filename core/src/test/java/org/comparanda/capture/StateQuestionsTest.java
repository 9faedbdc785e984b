package org.comparanda.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.junit.jupiter.api.Test;

class StateQuestionsTest {
  @Test
  void enterAloneMeansThatAllIsFine() {
    StateQuestions done = after(StateQuestions.of(2, Portion.WHOLE), "\n");
    assertEquals(StateQuestions.Stage.DONE, done.stage());
    assertEquals(new BoneState(Fusion.FUSED, Fusion.FUSED, Set.of()), done.state());
  }

  @Test
  void anEndThatIsMissingCantBeSeen() {
    BoneState state = after(StateQuestions.of(2, Portion.DISTAL), "\n").state();
    assertEquals(new BoneState(Fusion.CANT_SEE, Fusion.FUSED, Set.of()), state);
  }

  @Test
  void oneDigitAnswersForEachEnd() {
    BoneState state = after(StateQuestions.of(2, Portion.WHOLE), "21\n").state();
    assertEquals(new BoneState(Fusion.FUSING, Fusion.UNFUSED, Set.of()), state);
  }

  @Test
  void digitsAfterTheEndsSayWhatHappenedAndTakeItBack() {
    BoneState state = after(StateQuestions.of(2, Portion.WHOLE), "33640\n").state();
    assertEquals(Set.of(Flag.BURNT, Flag.PATHOLOGICAL, Flag.CUT), state.flags());
    assertEquals(Set.of(), after(StateQuestions.of(0, Portion.WHOLE), "66\n").state().flags());
  }

  @Test
  void slashBeginsAnew() {
    assertEquals(
        StateQuestions.of(2, Portion.WHOLE), after(StateQuestions.of(2, Portion.WHOLE), "134/"));
  }

  @Test
  void whatAnswersNothingChangesNothing() {
    StateQuestions first = StateQuestions.of(2, Portion.WHOLE);
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
