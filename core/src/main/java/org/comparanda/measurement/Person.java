package org.comparanda.measurement;

/**
 * Someone who measures or calls.
 *
 * @param name as the person wants to be named; empty when not given or blanked
 */
public record Person(PersonId id, String name) {}
