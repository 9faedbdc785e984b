/** The falling line: a column per measurement, a row per taxon, the reading falls through. */
@NullMarked
package org.comparanda.gui.control.falling;

import org.jspecify.annotations.NullMarked;
