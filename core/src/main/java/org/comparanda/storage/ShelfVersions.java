package org.comparanda.storage;

import java.time.Clock;
import org.jdbi.v3.core.Handle;

/** The shelf's version, which grows by one with every change of the shelf. */
record ShelfVersions(Clock clock) {
  /** The version now; 0 for an empty shelf. */
  static long now(Handle h) {
    return h.createQuery("select coalesce(max(version), 0) from shelf_change")
        .mapTo(Long.class)
        .one();
  }

  /** Counts one more and gives it back. */
  long next(Handle h, long animals, String origin) {
    long version = now(h) + 1;
    h.createUpdate(
            "insert into shelf_change (version, at, animals, origin)"
                + " values (:version, :at, :animals, :origin)")
        .bind("version", version)
        .bind("at", clock.instant().toString())
        .bind("animals", animals)
        .bind("origin", origin)
        .execute();
    return version;
  }
}
