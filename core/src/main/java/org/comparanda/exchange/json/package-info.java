/**
 * JSON of the commands, as docs/formats.md describes it: full double precision, and what could not
 * be computed is an object that says why. Infinity and not-a-number never stand in it.
 */
@NullMarked
package org.comparanda.exchange.json;

import org.jspecify.annotations.NullMarked;
