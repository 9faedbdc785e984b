/** Lots, trays, the bones in hand on their way through the room, and people's calls. */
@NullMarked
package org.comparanda.tray;

import org.jspecify.annotations.NullMarked;
