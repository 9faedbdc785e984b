package org.comparanda.sizeestimate;

import org.comparanda.statistics.line.ConfidenceInterval;
import org.comparanda.statistics.line.PredictionInterval;

/** Line and both bands at one x, in the unit of y, for drawing. */
public record LineBand(
    double x, double fit, ConfidenceInterval confidence, PredictionInterval prediction) {}
