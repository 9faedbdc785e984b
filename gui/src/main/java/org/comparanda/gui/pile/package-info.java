/** The Pile: what came in to become a comparative skeleton, and what goes on top. */
@NullMarked
package org.comparanda.gui.pile;

import org.jspecify.annotations.NullMarked;
