package org.comparanda.capture;

import java.time.Instant;
import java.util.Optional;
import org.comparanda.measurement.PersonId;

/**
 * Who does something, when, and through which caliper.
 *
 * @param card name of the caliper card; empty when typed by hand
 */
public record Hand(PersonId person, Instant at, Optional<String> card) {}
