package org.comparanda.capture;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.GrowingEnd;
import org.comparanda.bone.Portion;

/**
 * The state of a bone asked on the number pad, before anything is measured: fusion of each growing
 * end, then what happened to the bone.
 *
 * <pre>
 * Enter     all that is left is fine: an end in hand is fused, a missing one can't be seen
 * 1 to 5    fusion of the end asked, in the order of {@link #FUSIONS}
 * 1 to 9, 0 at the last question: sets or takes away what happened, in the order of {@link #FLAGS}
 * /         back to the first question, nothing recorded
 * </pre>
 *
 * @param ends growing ends of the element, none to two
 * @param portion what is in hand
 * @param asked index of the question: an end, or their number for what happened
 * @param state as answered so far; what was not asked yet stands as fine
 * @param stage whether more is asked
 */
public record StateQuestions(
    List<GrowingEnd> ends, Portion portion, int asked, BoneState state, Stage stage) {
  public StateQuestions {
    ends = List.copyOf(ends);
  }

  /** Answers for an end, from 1 on. */
  public static final List<Fusion> FUSIONS =
      List.of(Fusion.UNFUSED, Fusion.FUSING, Fusion.FUSED, Fusion.CANT_SEE, Fusion.NOT_APPLICABLE);

  /** What may have happened, from 1 on; the tenth is 0. */
  public static final List<Flag> FLAGS =
      List.of(
          Flag.CAST,
          Flag.RECONSTRUCTED,
          Flag.CRUSHED,
          Flag.PATHOLOGICAL,
          Flag.JUVENILE,
          Flag.BURNT,
          Flag.UNFUSED,
          Flag.ROLLED,
          Flag.GNAWED,
          Flag.CUT);

  /** Whether more is asked. */
  public enum Stage {
    ASKING,
    DONE
  }

  /** The first question for a bone with these growing ends. */
  public static StateQuestions of(List<GrowingEnd> ends, Portion portion) {
    return new StateQuestions(ends, portion, 0, fine(ends, portion), Stage.ASKING);
  }

  /** The state that "all fine" means: ends in hand fused, nothing happened. */
  private static BoneState fine(List<GrowingEnd> ends, Portion portion) {
    BoneState state = BoneState.notRecorded();
    for (GrowingEnd end : ends) {
      state = end.in(portion) ? end.with(state, Fusion.FUSED) : state;
    }
    return state;
  }

  /** Whether nothing but "all fine" was said so far. */
  public boolean allFine() {
    return state.equals(fine(ends, portion));
  }

  /** Whether an end is asked about, and not what happened. */
  public boolean asksAnEnd() {
    return asked < ends.size();
  }

  /** What follows a character; one that answers nothing changes nothing. */
  public StateQuestions typed(char key) {
    if (key == '\n' || key == '\r') {
      return new StateQuestions(ends, portion, asked, state, Stage.DONE);
    }
    if (key == '/') {
      return of(ends, portion);
    }
    if (key < '0' || key > '9') {
      return this;
    }
    int digit = key == '0' ? 10 : key - '0';
    return asksAnEnd() ? fused(digit) : happened(digit);
  }

  private StateQuestions fused(int digit) {
    if (digit > FUSIONS.size()) {
      return this;
    }
    Fusion answer = FUSIONS.get(digit - 1);
    BoneState next = ends.get(asked).with(state, answer);
    return new StateQuestions(ends, portion, asked + 1, next, Stage.ASKING);
  }

  private StateQuestions happened(int digit) {
    Flag flag = FLAGS.get(digit - 1);
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    flags.addAll(state.flags());
    if (!flags.remove(flag)) {
      flags.add(flag);
    }
    return new StateQuestions(ends, portion, asked, state.withFlags(flags), Stage.ASKING);
  }
}
