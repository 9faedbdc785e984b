package org.comparanda.gui.shelf;

import java.util.Locale;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.ReferenceAnimals;
import org.comparanda.taxon.TaxonTree;

/** What the Shelf screen looks at. */
public record ShelfRoom(
    ReferenceAnimals animals, Protocol protocol, TaxonTree tree, Words words, Locale locale) {}
