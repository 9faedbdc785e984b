package org.comparanda.suggestion;

import org.comparanda.measurement.MeasurementCode;

/**
 * A measurement worth taking next.
 *
 * @param gain expected drop in the entropy of the shares, nats
 * @param sentence the gain in words
 */
public record NextMeasurement(MeasurementCode measurement, double gain, String sentence) {}
