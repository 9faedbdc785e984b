package org.comparanda.capture;

import java.util.List;
import java.util.function.Function;

/** What became of a text from a caliper or a hand: read whole or refused whole. */
public sealed interface CaliperInput {
  /** Both cases handled, one result. */
  <T> T fold(Function<Read, ? extends T> read, Function<Refused, ? extends T> refused);

  /** One value or, from a burst, several, in the order they came. */
  record Read(List<CaliperValue> values) implements CaliperInput {
    public Read {
      values = List.copyOf(values);
    }

    @Override
    public <T> T fold(Function<Read, ? extends T> read, Function<Refused, ? extends T> refused) {
      return read.apply(this);
    }
  }

  /**
   * Nothing of the text was taken.
   *
   * @param text the text as it came
   * @param reason a sentence for the person at the bench, with what to do
   */
  record Refused(String text, String reason) implements CaliperInput {
    @Override
    public <T> T fold(Function<Read, ? extends T> read, Function<Refused, ? extends T> refused) {
      return refused.apply(this);
    }
  }
}
