package org.comparanda.gui.capture;

import java.util.List;

/**
 * A question over the bench that digits and Enter answer.
 *
 * @param title what is asked
 * @param explained what an answer does, and what Enter alone means
 * @param choices numbered answers; empty where a count is asked
 */
public record Question(String title, String explained, List<Choice> choices) {
  public Question {
    choices = List.copyOf(choices);
  }

  /** One numbered answer. */
  public record Choice(String number, String text) {}
}
