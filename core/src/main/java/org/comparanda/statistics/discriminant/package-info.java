/**
 * Which group a row of numbers fits: shares, distances, typicality, and trials of held-out units.
 *
 * <p>A unit is the animal that a row belongs to. Formulas and sources: docs/methods.md.
 */
@NullMarked
package org.comparanda.statistics.discriminant;

import org.jspecify.annotations.NullMarked;
