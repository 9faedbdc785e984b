/**
 * The Second Look: which bones another person looks at again, how far the two calls agree, and
 * where they part. Knows no screen; that the second person sees neither call nor suggestion before
 * their own is the screen's duty.
 */
@NullMarked
package org.comparanda.secondlook;

import org.jspecify.annotations.NullMarked;
