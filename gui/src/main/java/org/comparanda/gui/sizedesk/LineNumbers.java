package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineCoefficient;
import org.comparanda.sizeestimate.LineMethod;
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
  private final Function<String, Quantity> quantities;

  LineNumbers(Words words, Locale locale, Function<String, Quantity> quantities) {
    this.words = words;
    this.locale = locale;
    this.numbers = new Numbers(locale);
    this.quantities = quantities;
  }

  /** One row, and one more for each further predictor with its slope and range. */
  List<NumberRow> of(String name, FittedLine line) {
    List<NumberRow> rows = new ArrayList<>();
    boolean several = line.slopes().size() > 1;
    for (int j = 0; j < line.slopes().size(); j++) {
      Quantity from = quantities.apply(line.question().from().get(j));
      String slope = slope(line.slopes().get(j));
      String range = range(line.xRange().get(j), from);
      rows.add(
          j == 0
              ? first(several ? name + ": " + from.name() : name, line, slope, range)
              : new NumberRow(from.name(), List.of("", slope, "", "", "", "", range)));
    }
    return rows;
  }

  private NumberRow first(String name, FittedLine line, String slope, String range) {
    return new NumberRow(
        name,
        List.of(
            line.method() == LineMethod.PGLS
                ? words.get("numbers.taxa", line.n())
                : Integer.toString(line.n()),
            slope,
            coefficient(line.intercept()),
            numbers.fixed(line.residualStandardError(), 4),
            shown(line.rSquared(), 3),
            line.meanAbsolutePercentError()
                .fold(p -> words.get("percent", numbers.fixed(p, 1)), none -> NONE),
            range));
  }

  private String range(PredictorRange range, Quantity from) {
    ShownUnit unit = ShownUnit.of(from.unit(), range.high());
    return words.get(
        "range",
        unit.measured(range.low(), locale).replace(" " + unit.symbol(), ""),
        unit.measured(range.high(), locale));
  }

  /** A slope without a standard error (a major axis) is told with its 95 % limits. */
  private String slope(LineCoefficient c) {
    return c.standardError()
        .fold(
            error -> coefficient(c),
            none ->
                c.interval95()
                    .fold(
                        i ->
                            words.get(
                                "slope.limits",
                                numbers.fixed(c.value(), 3),
                                numbers.fixed(i.lower(), 3),
                                numbers.fixed(i.upper(), 3)),
                        nothing -> numbers.fixed(c.value(), 4)));
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
