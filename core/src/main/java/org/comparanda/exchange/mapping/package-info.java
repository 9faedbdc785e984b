/** How one kind of table is read, kept under a name. */
@NullMarked
package org.comparanda.exchange.mapping;

import org.jspecify.annotations.NullMarked;
