package org.comparanda.exchange.opencopy;

/**
 * The first line of an open copy.
 *
 * @param program name and version of the program that wrote it
 * @param contentHash of the collection it was made from
 * @param dayBookHead head hash of its Day Book
 */
public record OpenCopyHead(String program, String contentHash, String dayBookHead) {}
