package org.comparanda.gui.sizedesk;

import java.util.Optional;

/**
 * A further measurement of the animal, on the same bone or on another.
 *
 * @param key as the size line names it
 * @param value in its own unit; empty until there is one
 */
public record Further(String key, Optional<Double> value) {}
