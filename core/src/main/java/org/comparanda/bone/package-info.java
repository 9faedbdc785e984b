/**
 * Which bone, side, portion and state: small closed lists and records. Knows nothing else of ours.
 */
@NullMarked
package org.comparanda.bone;

import org.jspecify.annotations.NullMarked;
