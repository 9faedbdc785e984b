package org.comparanda.statistics;

import java.util.function.Function;

/** A computation that gave a value. */
public record Estimated<T>(T result) implements Outcome<T> {
  @Override
  public <R> R fold(
      Function<? super T, ? extends R> value, Function<NotEstimable<T>, ? extends R> none) {
    return value.apply(result);
  }
}
