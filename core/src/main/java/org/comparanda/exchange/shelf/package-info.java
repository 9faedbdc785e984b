/** The whole shelf as a table that comes back as it was. */
@NullMarked
package org.comparanda.exchange.shelf;

import org.jspecify.annotations.NullMarked;
