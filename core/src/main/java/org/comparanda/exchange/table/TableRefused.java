package org.comparanda.exchange.table;

import java.util.function.Function;

/** A table of which nothing is used. */
public record TableRefused<T>(ProblemReport report) implements TableOutcome<T> {
  @Override
  public <R> R fold(
      Function<TableRead<T>, ? extends R> read, Function<ProblemReport, ? extends R> refused) {
    return refused.apply(report);
  }
}
