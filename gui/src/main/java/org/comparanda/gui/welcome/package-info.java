/** The first start on a computer: who sits here, which collection, which caliper. */
@NullMarked
package org.comparanda.gui.welcome;

import org.jspecify.annotations.NullMarked;
