package org.comparanda.gui.capture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.GrowingEnd;
import org.comparanda.capture.StateQuestions;
import org.comparanda.gui.text.Words;

/** A bone's state in one line, so that nobody records what they have not read. */
public final class StateWords {
  private StateWords() {}

  /** What Enter would record now. */
  public static String of(StateQuestions asked, Words words) {
    return of(asked.state(), asked.ends(), words);
  }

  /** Each growing end with its fusion, then what happened: "upper end fused, nothing happened". */
  public static String of(BoneState state, List<GrowingEnd> ends, Words words) {
    List<String> parts = new ArrayList<>();
    for (GrowingEnd end : ends) {
      parts.add(words.get("end." + end) + " " + words.get("fusion." + end.of(state)));
    }
    parts.add(
        state.flags().isEmpty()
            ? words.get("state.fine.nothing")
            : state.flags().stream()
                .sorted()
                .map(flag -> words.get("flag." + flag))
                .collect(Collectors.joining(", ")));
    return String.join(", ", parts);
  }
}
