package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Locale;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineCoefficient;
import org.comparanda.sizeestimate.PredictorRange;
import org.comparanda.statistics.Outcome;

/** A line's numbers as texts. What can't be estimated is a dash. */
final class LineNumbers {
  /** Keys of the headings, in the order of {@link NumberRow#values}. */
  static final List<String> HEADINGS =
      List.of("n", "slope", "intercept", "residual", "r2", "heldout", "range");

  private static final String NONE = "–";

  private final Words words;
  private final Numbers numbers;
  private final Locale locale;

  LineNumbers(Words words, Locale locale) {
    this.words = words;
    this.locale = locale;
    this.numbers = new Numbers(locale);
  }

  NumberRow of(String name, FittedLine line, Quantity from) {
    PredictorRange range = line.xRange().get(0);
    ShownUnit unit = ShownUnit.of(from.unit(), range.high());
    return new NumberRow(
        name,
        List.of(
            Integer.toString(line.n()),
            coefficient(line.slopes().get(0)),
            coefficient(line.intercept()),
            numbers.fixed(line.residualStandardError(), 4),
            shown(line.rSquared(), 3),
            line.meanAbsolutePercentError()
                .fold(p -> words.get("percent", numbers.fixed(p, 1)), none -> NONE),
            words.get(
                "range",
                unit.measured(range.low(), locale).replace(" " + unit.symbol(), ""),
                unit.measured(range.high(), locale))));
  }

  /** Value and standard error, both to the error's second digit. */
  private String coefficient(LineCoefficient c) {
    return c.standardError()
        .fold(
            error -> {
              int decimals = error > 0 ? Math.max(0, 1 - (int) Math.floor(Math.log10(error))) : 4;
              int shown = Math.min(decimals, 6);
              return words.get(
                  "plusminus", numbers.fixed(c.value(), shown), numbers.fixed(error, shown));
            },
            none -> numbers.fixed(c.value(), 4));
  }

  private String shown(Outcome<Double> value, int decimals) {
    return value.fold(v -> numbers.fixed(v, decimals), none -> NONE);
  }
}
