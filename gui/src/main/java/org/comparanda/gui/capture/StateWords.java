package org.comparanda.gui.capture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Fusion;
import org.comparanda.capture.StateQuestions;
import org.comparanda.gui.text.Words;

/** A bone's state in one line, so that nobody records what they have not read. */
public final class StateWords {
  private StateWords() {}

  /** What Enter would record now. */
  public static String of(StateQuestions asked, List<String> ends, Words words) {
    return of(asked.state(), ends, words);
  }

  /** Each growing end with its fusion, then what happened: "upper end fused, nothing happened". */
  public static String of(BoneState state, List<String> ends, Words words) {
    List<String> parts = new ArrayList<>();
    List<Fusion> fusions = List.of(state.proximal(), state.distal());
    for (int i = 0; i < Math.min(ends.size(), fusions.size()); i++) {
      parts.add(ends.get(i) + " " + words.get("fusion." + fusions.get(i)));
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
