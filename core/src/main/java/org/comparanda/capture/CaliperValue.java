package org.comparanda.capture;

import org.comparanda.measurement.Length;

/**
 * One value that was read.
 *
 * @param asTyped exactly the characters that stood there, unit included
 * @param length what they mean
 * @param print the same value written plainly with its unit; read again, it gives the same length
 */
public record CaliperValue(String asTyped, Length length, String print) {}
