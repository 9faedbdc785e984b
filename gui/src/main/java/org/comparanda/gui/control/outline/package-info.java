/** Outline drawing of a bone with the caliper's jaws. */
@NullMarked
package org.comparanda.gui.control.outline;

import org.jspecify.annotations.NullMarked;
