package org.comparanda.sizeestimate;

import java.util.List;
import org.comparanda.statistics.Outcome;

/**
 * How far a line is off on animals that it wasn't fitted to.
 *
 * @param meanAbsolutePercent mean of 100·|y − ŷ₋ᵢ|/ŷ₋ᵢ in y's own unit (Smith 1984)
 * @param pressRootMeanSquare √(PRESS/n) on the scale of the fit
 */
record HeldOutError(Outcome<Double> meanAbsolutePercent, Outcome<Double> pressRootMeanSquare) {
  static HeldOutError of(List<LinePoint> points, List<Outcome<Double>> heldOut, LineScale scale) {
    double percent = 0;
    double squares = 0;
    for (int i = 0; i < points.size(); i++) {
      Outcome<Double> fit = heldOut.get(i);
      if (fit.value().isEmpty()) {
        return new HeldOutError(fit, fit);
      }
      double held = fit.value().orElseThrow();
      double back = scale.back(held);
      double y = points.get(i).y();
      percent += back > 0 ? 100 * Math.abs(y - back) / back : Double.POSITIVE_INFINITY;
      squares += Math.pow(scale.forward(y) - held, 2);
    }
    int n = points.size();
    return new HeldOutError(
        Double.isFinite(percent)
            ? Outcome.of(percent / n)
            : Outcome.none(
                "The line gives values of zero or below.", "Ask for the line on logarithms."),
        Outcome.of(Math.sqrt(squares / n)));
  }
}
