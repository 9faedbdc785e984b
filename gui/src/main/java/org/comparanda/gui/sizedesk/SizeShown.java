package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Optional;
import org.comparanda.gui.control.plot.Figure;
import org.comparanda.sizeestimate.FittedLine;

/**
 * All that the screen shows of a finding, ready for the eye.
 *
 * @param answer the answer in words
 * @param figure the plot; empty when there is no line
 * @param diagnostics pictures of how far the line can be trusted; none for a major axis
 * @param numbers one row per line
 * @param methods paragraph to paste, empty when there is no line
 * @param table the animals behind the line as CSV, empty when there is no line
 * @param line the line itself
 */
public record SizeShown(
    AnswerText answer,
    Optional<Figure> figure,
    List<Figure> diagnostics,
    List<NumberRow> numbers,
    String methods,
    String table,
    Optional<FittedLine> line) {
  public SizeShown {
    diagnostics = List.copyOf(diagnostics);
    numbers = List.copyOf(numbers);
  }

  static SizeShown none(AnswerText why) {
    return new SizeShown(why, Optional.empty(), List.of(), List.of(), "", "", Optional.empty());
  }

  static SizeShown blank() {
    return none(new AnswerText("", "", List.of()));
  }
}
