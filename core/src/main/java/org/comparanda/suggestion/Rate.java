package org.comparanda.suggestion;

/** So many of so many. */
public record Rate(int hits, int of) {}
