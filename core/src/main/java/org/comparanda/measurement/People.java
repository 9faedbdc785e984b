package org.comparanda.measurement;

import java.util.List;
import java.util.Optional;

/**
 * Repository of names. Rows everywhere else name a person by id alone, so that a name can be
 * blanked without touching them. An id that appears in a row without being saved first is known
 * here with an empty name.
 */
public interface People {
  /** All of them, by id. */
  List<Person> all();

  Optional<Person> person(PersonId id);

  /** Adds a person or replaces the name; an empty name blanks it. */
  void save(Person person);
}
