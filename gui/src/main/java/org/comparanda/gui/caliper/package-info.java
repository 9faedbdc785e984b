/** Hearing a caliper that types, and learning its card; used by every screen that hears one. */
@NullMarked
package org.comparanda.gui.caliper;

import org.jspecify.annotations.NullMarked;
