package org.comparanda.sizeestimate;

import java.util.List;
import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.ConfidenceInterval;
import org.comparanda.statistics.line.PredictionInterval;

/**
 * What a line says of one bone, in the unit of the quantity asked for.
 *
 * @param estimate the estimate, correction applied
 * @param correction the correction used
 * @param factor its factor, by which the plain antilog was multiplied
 * @param prediction where this one animal is expected; limits are never corrected
 * @param confidence where the mean of animals with such a bone lies; limits are never corrected
 * @param reach within, outside or far outside the animals of the line
 * @param outsideRange the predictor furthest outside, if any
 * @param fit the line's value on the scale of the fit
 * @param standardErrorOfNew standard error for one new animal on the scale of the fit
 * @param degreesOfFreedom of the t distribution behind the intervals
 * @param warnings sentences for the reader, possibly none
 */
public record SizeEstimate(
    double estimate,
    Correction correction,
    double factor,
    Outcome<PredictionInterval> prediction,
    Outcome<ConfidenceInterval> confidence,
    Reach reach,
    Optional<OutsideRange> outsideRange,
    double fit,
    Outcome<Double> standardErrorOfNew,
    int degreesOfFreedom,
    List<String> warnings) {
  public SizeEstimate {
    warnings = List.copyOf(warnings);
  }
}
