/** The pile: carcasses and skeletons that came in and are not on the shelf yet, and their order. */
@NullMarked
package org.comparanda.pile;

import org.jspecify.annotations.NullMarked;
