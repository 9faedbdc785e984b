/**
 * Old cards: lines of legacy lists, kept as found. A small parser proposes what a line says and
 * marks every word it read and every word it left over; a person accepts or refuses.
 */
@NullMarked
package org.comparanda.oldcards;

import org.jspecify.annotations.NullMarked;
