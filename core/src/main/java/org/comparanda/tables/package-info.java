/** Readers of the reference tables: protocol, outlines, taxon tree, published equations. */
@NullMarked
package org.comparanda.tables;

import org.jspecify.annotations.NullMarked;
