/**
 * Integrity checks over the shelf: each one small class, one sentence, one proposed remedy. They
 * work on plain rows, since a table with faults can't become a shelf.
 */
@NullMarked
package org.comparanda.check;

import org.jspecify.annotations.NullMarked;
