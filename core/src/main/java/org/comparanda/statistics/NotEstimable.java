package org.comparanda.statistics;

import java.util.function.Function;

/**
 * A computation that could not be done.
 *
 * @param reason what is missing, a sentence for the person at the bench
 * @param remedy what to do about it, a sentence
 */
public record NotEstimable<T>(String reason, String remedy) implements Outcome<T> {
  @Override
  public <R> R fold(
      Function<? super T, ? extends R> value, Function<NotEstimable<T>, ? extends R> none) {
    return none.apply(this);
  }
}
