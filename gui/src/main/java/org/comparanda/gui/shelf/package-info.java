/**
 * The Shelf: the comparative animals, their bones, the stock per taxon and element, and the import
 * of tables. All but the views runs without a window.
 */
@NullMarked
package org.comparanda.gui.shelf;

import org.jspecify.annotations.NullMarked;
