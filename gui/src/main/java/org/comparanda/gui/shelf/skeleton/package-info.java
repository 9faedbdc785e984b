/** A comparative skeleton being measured, element after element, left and right side by side. */
@NullMarked
package org.comparanda.gui.shelf.skeleton;

import org.jspecify.annotations.NullMarked;
