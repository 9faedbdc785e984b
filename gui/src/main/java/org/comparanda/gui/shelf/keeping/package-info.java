/**
 * The keeper's pages of the Shelf: an animal's card to be edited, a skeleton to be measured, the
 * integrity list, the stock, the wanted list and the names.
 */
@NullMarked
package org.comparanda.gui.shelf.keeping;

import org.jspecify.annotations.NullMarked;
