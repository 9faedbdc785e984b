/** Trees of descent, and lines between taxa that share ancestors. */
@NullMarked
package org.comparanda.statistics.phylo;

import org.jspecify.annotations.NullMarked;
