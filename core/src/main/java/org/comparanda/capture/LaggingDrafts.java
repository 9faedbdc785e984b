package org.comparanda.capture;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * Saves half-typed text a little later, only the newest, so that typing never waits for the disk.
 *
 * <p>For several threads at once.
 */
public final class LaggingDrafts implements Drafts {
  private final Drafts kept;
  private final Executor later;
  private final Map<String, Draft> waiting = new HashMap<>();

  /**
   * @param later runs a task at most 200 ms from now, off the window's thread
   */
  public LaggingDrafts(Drafts kept, Executor later) {
    this.kept = kept;
    this.later = later;
  }

  @Override
  public synchronized void save(String bench, Draft draft) {
    boolean nothingWaited = waiting.put(bench, draft) == null;
    if (nothingWaited) {
      later.execute(() -> write(bench));
    }
  }

  private synchronized void write(String bench) {
    Draft newest = waiting.remove(bench);
    if (newest != null) {
      kept.save(bench, newest);
    }
  }

  @Override
  public synchronized Optional<Draft> of(String bench) {
    return Optional.ofNullable(waiting.get(bench)).or(() -> kept.of(bench));
  }

  @Override
  public synchronized void clear(String bench) {
    waiting.remove(bench);
    kept.clear(bench);
  }
}
