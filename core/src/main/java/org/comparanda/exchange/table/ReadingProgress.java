package org.comparanda.exchange.table;

/** Told while a table is read; may ask the reader to stop. */
public interface ReadingProgress {
  /** So many bytes of the file are read. */
  void read(long bytes, long ofBytes);

  /**
   * Whether to stop; reading then ends with a {@link java.util.concurrent.CancellationException}.
   */
  boolean cancelled();

  /** Says nothing more, but may still ask to stop: for a pass that is not the last. */
  default ReadingProgress unsaid() {
    ReadingProgress asked = this;
    return new ReadingProgress() {
      @Override
      public void read(long bytes, long ofBytes) {}

      @Override
      public boolean cancelled() {
        return asked.cancelled();
      }
    };
  }

  /** Nobody watches, nobody stops. */
  static ReadingProgress unwatched() {
    return new ReadingProgress() {
      @Override
      public void read(long bytes, long ofBytes) {}

      @Override
      public boolean cancelled() {
        return false;
      }
    };
  }
}
