package org.comparanda.capture;

import java.util.List;
import java.util.Optional;

/** Repository of the caliper cards of a room. */
public interface CaliperCards {
  /** All of them, by name. */
  List<CaliperCard> all();

  Optional<CaliperCard> card(String name);

  /** Adds a card or replaces the one of that name. */
  void save(CaliperCard card);
}
