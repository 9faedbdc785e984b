/** Straight lines: fits, intervals, corrections, diagnostics. Numbers in, records out. */
@NullMarked
package org.comparanda.statistics.line;

import org.jspecify.annotations.NullMarked;
