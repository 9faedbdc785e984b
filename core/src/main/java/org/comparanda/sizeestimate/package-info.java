/** Body length or mass, or another bone's length, with interval; or why not. */
@NullMarked
package org.comparanda.sizeestimate;

import org.jspecify.annotations.NullMarked;
