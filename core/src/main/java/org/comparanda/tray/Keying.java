package org.comparanda.tray;

import java.util.Optional;

/** Repository of what a bench is about beyond the bone in hand; it comes back after a restart. */
public interface Keying {
  /** The batch that is under way. */
  Optional<Batch> batch(String bench);

  void save(String bench, Batch batch);

  void endBatch(String bench);

  /** The two bones that are measured side by side. */
  Optional<Pair> pair(String bench);

  void save(String bench, Pair pair);

  void endPair(String bench);
}
