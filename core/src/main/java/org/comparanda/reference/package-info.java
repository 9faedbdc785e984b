/** The Shelf: comparative animals with their measured bones, and the repository interface. */
@NullMarked
package org.comparanda.reference;

import org.jspecify.annotations.NullMarked;
