package org.comparanda.suggestion;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Keeps the latest results of a pure function; safe for many threads. Two threads that ask for the
 * same missing result may both reckon it, with equal outcome.
 */
final class Memo<K, V> {
  private final Function<K, V> function;
  private final Map<K, V> kept;

  Memo(int most, Function<K, V> function) {
    this.function = function;
    this.kept =
        new LinkedHashMap<>(16, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        };
  }

  V of(K key) {
    synchronized (kept) {
      V known = kept.get(key);
      if (known != null) {
        return known;
      }
    }
    V fresh = function.apply(key);
    synchronized (kept) {
      kept.put(key, fresh);
    }
    return fresh;
  }
}
