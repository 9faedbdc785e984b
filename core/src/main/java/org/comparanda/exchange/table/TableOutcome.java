package org.comparanda.exchange.table;

import java.util.function.Function;

/** What reading a table gives: all of it, or the report of why none of it. */
public sealed interface TableOutcome<T> permits TableRead, TableRefused {
  /** Both cases handled, one result. */
  <R> R fold(
      Function<TableRead<T>, ? extends R> read, Function<ProblemReport, ? extends R> refused);
}
