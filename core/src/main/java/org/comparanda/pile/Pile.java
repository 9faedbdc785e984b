package org.comparanda.pile;

import java.util.List;
import java.util.Optional;

/** Repository of what came in. */
public interface Pile {
  /** All arrivals, those no longer on the pile included, by number. */
  List<Arrival> all();

  Optional<Arrival> arrival(String number);

  /** Adds an arrival or replaces what is recorded of it. */
  void save(Arrival arrival);

  /** All interest ever, oldest first. */
  List<Interest> interest();

  /** Adds interest; none is ever taken away. */
  void add(Interest interest);
}
