/** Names, ranks, who is whose parent; growth and look-alikes as data. */
@NullMarked
package org.comparanda.taxon;

import org.jspecify.annotations.NullMarked;
