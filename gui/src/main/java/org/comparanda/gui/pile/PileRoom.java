package org.comparanda.gui.pile;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.comparanda.gui.text.Words;
import org.comparanda.pile.Pile;
import org.comparanda.pile.PileEntry;
import org.comparanda.reference.Shelf;
import org.comparanda.taxon.TaxonTree;

/**
 * What the screen of the pile looks at.
 *
 * @param taxa as the house names them now
 */
public record PileRoom(
    Pile pile,
    Supplier<Shelf> shelf,
    Supplier<TaxonTree> taxa,
    Printing printing,
    Words words,
    Locale locale,
    Clock clock) {
  /** Prints the pile as PDF. */
  public interface Printing {
    /** Errors: {@link IOException} if it can't be written. */
    void to(Path file, List<PileEntry> entries) throws IOException;
  }
}
