package org.comparanda.oldcards;

/**
 * A piece of a card's text and what it was read as.
 *
 * @param from place of its first character
 * @param to place behind its last character
 * @param part what it is about
 * @param meaning what it was read as; for words left over, the words
 */
public record Piece(int from, int to, Part part, String meaning) {}
