package org.comparanda.capture;

import java.util.List;
import java.util.function.Function;
import org.comparanda.measurement.Reading;

/** What a command does: rows to append, another field, or nothing with a reason. */
public sealed interface Step {
  /** All three cases handled, one result. */
  <T> T fold(
      Function<Append, ? extends T> append,
      Function<Move, ? extends T> move,
      Function<Refused, ? extends T> refused);

  /** Rows for the log; the next state is {@link Passes#with} what the log gave back. */
  record Append(List<Reading> rows) implements Step {
    public Append {
      rows = List.copyOf(rows);
    }

    @Override
    public <T> T fold(
        Function<Append, ? extends T> append,
        Function<Move, ? extends T> move,
        Function<Refused, ? extends T> refused) {
      return append.apply(this);
    }
  }

  /** Another field, nothing to record. */
  record Move(Passes next) implements Step {
    @Override
    public <T> T fold(
        Function<Append, ? extends T> append,
        Function<Move, ? extends T> move,
        Function<Refused, ? extends T> refused) {
      return move.apply(this);
    }
  }

  /** Nothing changed; the sentence says why. */
  record Refused(String sentence) implements Step {
    @Override
    public <T> T fold(
        Function<Append, ? extends T> append,
        Function<Move, ? extends T> move,
        Function<Refused, ? extends T> refused) {
      return refused.apply(this);
    }
  }
}
