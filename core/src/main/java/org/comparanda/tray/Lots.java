package org.comparanda.tray;

import java.util.List;

/** Repository of lots. A lot that was never saved is as {@link Lot#named} has it. */
public interface Lots {
  /** The lots of all trays, in alphabetical order. */
  List<Lot> all();

  Lot lot(String id);

  /** Adds a lot or replaces what is recorded of it. */
  void save(Lot lot);
}
