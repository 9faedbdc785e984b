package org.comparanda.oldcards;

import org.comparanda.measurement.Length;

/**
 * A length of a card.
 *
 * @param asWritten number and unit as on the card
 * @param length what they stand for
 */
public record WrittenLength(String asWritten, Length length) {}
