package org.comparanda.gui.shelf;

import java.util.Iterator;
import java.util.Locale;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Progress;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.register.AnimalCard;
import org.comparanda.taxon.TaxonTree;

/** What the Shelf screen looks at. */
public record ShelfRoom(
    ReferenceAnimals animals,
    Adding adding,
    Protocol protocol,
    TaxonTree tree,
    Words words,
    Locale locale) {
  /** How animals of a table come onto the shelf: all of them or none. */
  public interface Adding {
    /** So many were stored; 0 when progress stopped it. */
    long add(Iterator<AnimalCard> cards, String origin, Progress progress);
  }
}
