/** The Day Book screen: what changed, by whom and when, and the proof that nothing else did. */
@NullMarked
package org.comparanda.gui.daybook;

import org.jspecify.annotations.NullMarked;
