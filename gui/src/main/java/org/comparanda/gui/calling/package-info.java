/** What several screens show of a bone and take down as a person's word on it. */
@NullMarked
package org.comparanda.gui.calling;

import org.jspecify.annotations.NullMarked;
