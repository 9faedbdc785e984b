/**
 * The register of the Shelf: what is known of each animal beside what fits need, and every change
 * of it with old and new value, who, when and why. Nothing is deleted.
 */
@NullMarked
package org.comparanda.register;

import org.jspecify.annotations.NullMarked;
