/** Spread and outliers that a few wrong rows can't hide in. */
@NullMarked
package org.comparanda.statistics.robust;

import org.jspecify.annotations.NullMarked;
