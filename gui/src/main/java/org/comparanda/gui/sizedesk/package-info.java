/**
 * The Size Desk: which size, from which measurement, by which line; the answer, the plot, the
 * numbers and the words to print. All but the views runs without a window.
 */
@NullMarked
package org.comparanda.gui.sizedesk;

import org.jspecify.annotations.NullMarked;
