/** The House Rules screen: what holds in this house, who set it, and setting it. */
@NullMarked
package org.comparanda.gui.houserules;

import org.jspecify.annotations.NullMarked;
