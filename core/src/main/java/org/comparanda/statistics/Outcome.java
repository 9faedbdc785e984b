package org.comparanda.statistics;

import java.util.Optional;
import java.util.function.Function;

/**
 * What a computation gives: a value, or the reason why there is none. "Could not" is ordinary life
 * here, not an exception, not null and not NaN.
 */
public sealed interface Outcome<T> permits Estimated, NotEstimable {
  /** Both cases handled, one result. */
  <R> R fold(Function<? super T, ? extends R> value, Function<NotEstimable<T>, ? extends R> none);

  /** The value if there is one. */
  default Optional<T> value() {
    return fold(Optional::of, none -> Optional.empty());
  }

  /** The outcome of a further computation on the value. */
  default <R> Outcome<R> then(Function<? super T, Outcome<R>> next) {
    return fold(next, none -> new NotEstimable<>(none.reason(), none.remedy()));
  }

  static <T> Outcome<T> of(T value) {
    return new Estimated<>(value);
  }

  static <T> Outcome<T> none(String reason, String remedy) {
    return new NotEstimable<>(reason, remedy);
  }
}
