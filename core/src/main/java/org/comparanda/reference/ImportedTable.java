package org.comparanda.reference;

import java.time.Instant;

/**
 * A table whose animals came onto the shelf.
 *
 * @param content SHA-256 of the file, in hexadecimal
 * @param file its name
 * @param at when
 * @param animals how many it brought
 */
public record ImportedTable(String content, String file, Instant at, long animals) {}
