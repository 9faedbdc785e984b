/** Numbers in, records out. Knows no bone and no taxon; imports nothing of ours. */
@NullMarked
package org.comparanda.statistics;

import org.jspecify.annotations.NullMarked;
