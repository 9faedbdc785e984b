package org.comparanda.reference;

import java.util.Optional;

/** Repository of the tables that were imported, by their content. */
public interface ImportedTables {
  /** The import of a file with that content, if there was one. */
  Optional<ImportedTable> ofContent(String sha256);
}
