/** How well repeated readings, and people, agree. Numbers in, records out. */
@NullMarked
package org.comparanda.statistics.agreement;

import org.jspecify.annotations.NullMarked;
