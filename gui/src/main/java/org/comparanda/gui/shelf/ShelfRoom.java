package org.comparanda.gui.shelf;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.ImportedTable;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.reference.TableMappings;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.SetDown;
import org.comparanda.taxon.TaxonTree;

/**
 * What the Shelf screen looks at.
 *
 * @param taxa as the house names them now
 * @param cards every animal's card, those that left the shelf included
 */
public record ShelfRoom(
    ReferenceAnimals animals,
    Adding adding,
    Supplier<List<AnimalCard>> cards,
    Protocol protocol,
    Supplier<TaxonTree> taxa,
    Words words,
    Locale locale) {
  TaxonTree tree() {
    return taxa.get();
  }

  /** How animals of a table come onto the shelf: all of them or none. */
  public interface Adding {
    /** So many were stored; 0 when progress stopped it. */
    long add(Path table, List<AnimalCard> cards, Progress progress);

    /** The import of a table with the same content, if there was one. */
    default Optional<ImportedTable> before(Path table) {
      return Optional.empty();
    }

    /** What an interrupted import of a table with the same content has set down. */
    default Optional<SetDown> begun(Path table) {
      return Optional.empty();
    }

    /** Takes away what an interrupted import has set down. */
    default void forget(Path table) {}

    /** How tables are read, under names; nothing where none are kept. */
    default Optional<TableMappings> mappings() {
      return Optional.empty();
    }
  }
}
