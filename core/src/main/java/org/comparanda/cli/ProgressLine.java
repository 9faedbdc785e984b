package org.comparanda.cli;

import java.nio.file.Path;
import org.comparanda.exchange.table.ReadingProgress;

/** Says on stderr how far a large table is read; small ones pass without a word. */
final class ProgressLine implements ReadingProgress {
  private static final long LARGE = 4L << 20;

  private final Terminal terminal;
  private final String file;
  private long tenths;

  ProgressLine(Terminal terminal, Path table) {
    this.terminal = terminal;
    file = String.valueOf(table.getFileName());
  }

  @Override
  public void read(long bytes, long ofBytes) {
    long now = ofBytes == 0 ? 10 : 10 * bytes / ofBytes;
    if (ofBytes >= LARGE && now != tenths) {
      tenths = now;
      terminal.note(file + ": " + 10 * now + " % read");
    }
  }

  @Override
  public boolean cancelled() {
    return Thread.currentThread().isInterrupted();
  }
}
