package org.comparanda.capture;

import org.comparanda.measurement.MeasurementCode;

/** One field of one pass. */
public record Place(MeasurementCode code, int pass) {}
