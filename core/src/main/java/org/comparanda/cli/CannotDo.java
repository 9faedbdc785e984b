package org.comparanda.cli;

import java.util.List;
import org.comparanda.statistics.Outcome;

/** A command that can't be carried out; its lines say what, where, what to do. */
final class CannotDo extends RuntimeException {
  private static final long serialVersionUID = 1L;

  CannotDo(List<String> lines) {
    super(String.join(System.lineSeparator(), lines));
  }

  CannotDo(String line) {
    super(line);
  }

  /** The value, where there is one. */
  static <T> T orElse(Outcome<T> outcome) {
    return outcome.fold(
        value -> value,
        none -> {
          throw new CannotDo(none.reason() + " " + none.remedy());
        });
  }

  static CannotDo because(Outcome<?> outcome) {
    return new CannotDo(outcome.<String>fold(v -> "", n -> n.reason() + " " + n.remedy()));
  }
}
