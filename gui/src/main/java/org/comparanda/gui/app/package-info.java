/**
 * Main program of the desktop: opens the collection, wires the screens by constructors, owns
 * threads.
 */
@NullMarked
package org.comparanda.gui.app;

import org.jspecify.annotations.NullMarked;
