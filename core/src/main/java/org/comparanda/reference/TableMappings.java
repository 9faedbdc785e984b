package org.comparanda.reference;

import java.util.List;
import java.util.Optional;

/** Repository of saved mappings: how one kind of table is read, as text under a name. */
public interface TableMappings {
  /** Their names, in alphabetical order. */
  List<String> names();

  /** The text under that name. */
  Optional<String> text(String name);

  /** Saves a text under a name; an earlier one of that name is replaced. */
  void save(String name, String text);

  /** Removes the one under that name; the Day Book says that it was there. */
  void remove(String name);
}
