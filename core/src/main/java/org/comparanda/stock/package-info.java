/** What the shelf holds, what it lacks, and which element would tell two taxa apart. */
@NullMarked
package org.comparanda.stock;

import org.jspecify.annotations.NullMarked;
