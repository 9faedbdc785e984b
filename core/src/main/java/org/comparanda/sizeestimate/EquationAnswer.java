package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.PredictionInterval;

/**
 * What a published equation gives for one bone, in the equation's own unit.
 *
 * @param equation the equation
 * @param value its result
 * @param prediction from the published standard error and number of animals, where both are known;
 *     it leaves out how far the bone lies from their middle, so it is too narrow at the ends
 * @param warnings outside the published range, cautions of the source
 */
public record EquationAnswer(
    PublishedEquation equation,
    double value,
    Outcome<PredictionInterval> prediction,
    List<String> warnings) {
  public EquationAnswer {
    warnings = List.copyOf(warnings);
  }

  /** The equation at a measurement in mm. */
  public static Outcome<EquationAnswer> of(PublishedEquation equation, double mm, double level) {
    if (!(mm > 0) || Double.isInfinite(mm)) {
      return Outcome.none(
          "\"" + mm + "\" is no length.", "A measurement is above zero and finite.");
    }
    Optional<Double> inMm = EquationUnits.millimetres(equation.predictor().unit());
    if (inMm.isEmpty()) {
      return Outcome.none(
          "The equation takes its measurement in \"" + equation.predictor().unit() + "\".",
          "Give the equation a unit of mm or cm.");
    }
    double x = mm / inMm.get();
    double value = equation.form().at(x);
    return Outcome.of(
        new EquationAnswer(
            equation, value, prediction(equation, value, level), warnings(equation, x)));
  }

  private static Outcome<PredictionInterval> prediction(
      PublishedEquation equation, double value, double level) {
    if (equation.standardError().isEmpty()
        || equation.animals().isEmpty()
        || equation.animals().getAsInt() < 3) {
      return Outcome.none(
          "Its source gives no error, so there is no interval.",
          "Use a line fitted on the shelf to have one.");
    }
    int n = equation.animals().getAsInt();
    double reach =
        Distributions.tQuantile(0.5 + level / 2, n - 2.0)
            * equation.standardError().getAsDouble()
            * Math.sqrt(1 + 1.0 / n);
    if (equation.form() instanceof PublishedEquation.LogLine logs) {
      double factor = Math.pow(logs.base(), reach);
      return Outcome.of(new PredictionInterval(value / factor, value * factor, level));
    }
    return Outcome.of(new PredictionInterval(value - reach, value + reach, level));
  }

  private static List<String> warnings(PublishedEquation equation, double x) {
    List<String> warnings = new ArrayList<>();
    equation
        .valid()
        .filter(range -> x < range.low() || x > range.high())
        .ifPresent(
            range ->
                warnings.add(
                    String.format(
                        Locale.ROOT,
                        "%s %s lies outside the published range, %s to %s %s.",
                        number(x),
                        equation.predictor().unit(),
                        number(range.low()),
                        number(range.high()),
                        equation.predictor().unit())));
    if (!equation.caution().isBlank()) {
      warnings.add(equation.caution());
    }
    return warnings;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.4g", value);
  }
}
