package org.comparanda.sizeestimate;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.PercentError;
import org.comparanda.taxon.TaxonName;

/**
 * How a published equation does on the shelf's own animals.
 *
 * @param animals animals that have both
 * @param error per cent errors, the equation's value as the denominator
 */
public record EquationOnShelf(int animals, PercentError error) {
  /** In words, for example "On your 14 animals this equation is off by a median of 8.3 %." */
  public String sentence() {
    return String.format(
        Locale.ROOT,
        "On your %d animal(s) this equation is off by a median of %.1f %%, and %s by %.1f %% on"
            + " average.",
        animals,
        error.medianAbsolute(),
        error.mean() > 0 ? "too low" : "too high",
        Math.abs(error.mean()));
  }

  static Outcome<EquationOnShelf> of(
      SizeDesk desk, PublishedEquation equation, Set<TaxonName> taxa) {
    String predict =
        equation.predicts().equals("total_length") ? Quantity.BODY_LENGTH : equation.predicts();
    Optional<Double> unit = EquationUnits.ofShelf(equation.resultUnit());
    if (unit.isEmpty()) {
      return Outcome.none(
          "The equation gives its result in \"" + equation.resultUnit() + "\".",
          "Give the equation a unit of mm, cm, g or kg.");
    }
    SizeQuestion question = SizeQuestion.of(predict, equation.predictor().name()).withTaxa(taxa);
    return desk.points(question).then(rows -> compare(equation, rows, unit.get()));
  }

  private static Outcome<EquationOnShelf> compare(
      PublishedEquation equation, LineRows rows, double unit) {
    int n = rows.points().size();
    double[] observed = new double[n];
    double[] predicted = new double[n];
    for (int i = 0; i < n; i++) {
      Outcome<EquationAnswer> answer =
          EquationAnswer.of(equation, rows.points().get(i).x().get(0), 0.95);
      if (answer.value().isEmpty()) {
        return answer.then(a -> Outcome.none("", ""));
      }
      observed[i] = rows.points().get(i).y();
      predicted[i] = answer.value().get().value() * unit;
    }
    return n == 0
        ? Outcome.none(
            "No animal on the shelf has both.", "Measure animals whose body was measured, too.")
        : Outcome.of(new EquationOnShelf(n, PercentError.of(observed, predicted)));
  }
}
