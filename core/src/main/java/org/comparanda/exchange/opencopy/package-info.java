/** A whole collection as JSON lines that any program can read, and back. */
@NullMarked
package org.comparanda.exchange.opencopy;

import org.jspecify.annotations.NullMarked;
