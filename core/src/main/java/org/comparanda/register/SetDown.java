package org.comparanda.register;

import java.time.Instant;

/**
 * What an interrupted import of a table has set down beside the collection.
 *
 * @param file the table's name then
 * @param at when the last of them was set down
 * @param animals so many are set down
 * @param of so many the table brings
 */
public record SetDown(String file, Instant at, long animals, long of) {}
