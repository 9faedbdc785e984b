/**
 * The invented Harrowmere demo: a seeded generator that makes the simulated shelf and trays, and
 * plants known faults into a copy of the shelf. Nothing here was measured on a real animal.
 */
@NullMarked
package org.comparanda.demo;

import org.jspecify.annotations.NullMarked;
