package org.comparanda.gui.shelf;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongConsumer;
import org.comparanda.exchange.table.ReadingProgress;

/**
 * Tells the screen how far the reading of a table is.
 *
 * @param stop set when the person wants it to stop
 * @param percent told how many per cent are read
 */
record TableWatch(AtomicBoolean stop, LongConsumer percent) implements ReadingProgress {
  @Override
  public void read(long bytes, long ofBytes) {
    percent.accept(ofBytes == 0 ? 100 : 100 * bytes / ofBytes);
  }

  @Override
  public boolean cancelled() {
    return stop.get();
  }
}
