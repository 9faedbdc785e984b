package org.comparanda.gui.app;

import org.comparanda.storage.Collection;

/** Whether what is shown is simulated, so that every page says so; or a house's own record. */
enum Simulated {
  SIMULATED,
  RECORDED;

  /** By the trays' provenance and the animals' remarks, where the demo says it. */
  static Simulated of(Collection collection) {
    boolean said =
        collection.trays().all().stream().anyMatch(t -> t.provenance().contains("simulated"))
            || collection.animals().shelf().animals().stream()
                .anyMatch(a -> a.remarks().contains("simulated"));
    return said ? SIMULATED : RECORDED;
  }
}
