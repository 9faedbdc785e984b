/**
 * Measuring one bone: what a caliper or a hand may type, the passes with their takes, the keys. No
 * window and no clock of its own; everything that happened is in the readings.
 */
@NullMarked
package org.comparanda.capture;

import org.jspecify.annotations.NullMarked;
