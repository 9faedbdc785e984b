/** How many specimens, elements and animals a place holds at least, with every step on show. */
@NullMarked
package org.comparanda.tally;

import org.jspecify.annotations.NullMarked;
