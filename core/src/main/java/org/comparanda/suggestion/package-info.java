/** Ranked taxa with share and typicality, or the reason why there are none. */
@NullMarked
package org.comparanda.suggestion;

import org.jspecify.annotations.NullMarked;
