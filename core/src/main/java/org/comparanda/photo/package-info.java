/**
 * Pictures of bones and animals: known by their content, never altered, and copied out without the
 * tags that say where they were taken.
 */
@NullMarked
package org.comparanda.photo;

import org.jspecify.annotations.NullMarked;
