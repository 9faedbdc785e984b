package org.comparanda.exchange.table;

import java.util.function.Function;
import org.comparanda.measurement.Protocol;

/**
 * A table that was read whole.
 *
 * @param content what it holds
 * @param protocol the protocol, with the elements and measurements that the table brought
 * @param facts how it was read
 */
public record TableRead<T>(T content, Protocol protocol, TableFacts facts)
    implements TableOutcome<T> {
  @Override
  public <R> R fold(
      Function<TableRead<T>, ? extends R> read, Function<ProblemReport, ? extends R> refused) {
    return read.apply(this);
  }
}
