/** Pictures of what is in hand: added by file, drag and drop or paste; used by several screens. */
@NullMarked
package org.comparanda.gui.photos;

import org.jspecify.annotations.NullMarked;
