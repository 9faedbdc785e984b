/** The Bench: one bone in hand is measured and compared. */
@NullMarked
package org.comparanda.gui.bench;

import org.jspecify.annotations.NullMarked;
