package org.comparanda.sizeestimate;

import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.ConfidenceInterval;
import org.comparanda.statistics.line.LinePrediction;
import org.comparanda.statistics.line.PredictionInterval;

/** What a line says at one place, on the scale of the fit. */
record Placed(
    double fit,
    Outcome<Double> standardErrorOfNew,
    Outcome<ConfidenceInterval> confidence,
    Outcome<PredictionInterval> prediction) {
  static Placed of(LinePrediction p) {
    return new Placed(
        p.fit(),
        Outcome.of(p.standardErrorOfNew()),
        Outcome.of(p.confidence()),
        Outcome.of(p.prediction()));
  }
}
