package org.comparanda.cli;

/** Counts bones and says on stderr how far a long table has come. */
final class RowCounter {
  private static final long TELL_EVERY = 5_000;

  private final Terminal terminal;
  private final long of;
  private long done;

  RowCounter(Terminal terminal, long of) {
    this.terminal = terminal;
    this.of = of;
  }

  void oneMore() {
    done++;
    if (done % TELL_EVERY == 0) {
      terminal.note(done + " of " + Count.of(of, "bone"));
    }
  }

  long done() {
    return done;
  }
}
