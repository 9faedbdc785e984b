/**
 * Measuring a bone with keys and a caliper, wherever it lies: the Bench and the Shelf share it. The
 * rules are core's {@code capture}; here is what they look like.
 */
@NullMarked
package org.comparanda.gui.capture;

import org.jspecify.annotations.NullMarked;
