/** The Tray screen: lots and trays on their way, their bones, calls by eye, tallies. */
@NullMarked
package org.comparanda.gui.tray;

import org.jspecify.annotations.NullMarked;
