/**
 * Tables of bones (CSV): read whole or refused whole, with every problem listed by row and column.
 * The form is described in docs/formats.md.
 */
@NullMarked
package org.comparanda.exchange.table;

import org.jspecify.annotations.NullMarked;
