package org.comparanda.sizeestimate;

import java.util.Locale;
import java.util.stream.Collectors;
import org.comparanda.taxon.TaxonName;

/** A paragraph for the methods section of a paper: sample, formula, interval, correction. */
public final class MethodsParagraph {
  private MethodsParagraph() {}

  /**
   * The paragraph, in English.
   *
   * @param line the line used, with its correction
   * @param correction the correction of the estimates
   * @param version version of this program
   */
  public static String of(FittedLine line, Correction correction, String version) {
    SizeQuestion asked = line.question();
    String taxa =
        line.taxa().isEmpty()
            ? "taxa not recorded"
            : line.taxa().stream().map(TaxonName::value).collect(Collectors.joining(", "));
    String points = line.method() == LineMethod.PGLS ? "taxon means" : "animals, one row each";
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "%s was estimated from %s by %s on %s (n = %d %s: %s; %s).",
            asked.predict(),
            String.join(", ", asked.from()),
            method(line),
            scale(asked.scale()),
            line.n(),
            points,
            taxa,
            ranges(line)));
    text.append(' ').append(formula(line)).append('.');
    text.append(
        String.format(
            Locale.ROOT,
            " Residual standard error %s on %d degrees of freedom%s.",
            number(line.residualStandardError()),
            line.degreesOfFreedom(),
            line.rSquared().value().map(r -> ", r² " + number(r)).orElse("")));
    line.meanAbsolutePercentError()
        .value()
        .ifPresent(
            e ->
                text.append(
                    String.format(
                        Locale.ROOT,
                        " Mean absolute per cent error of points held out in turn: %.1f (Smith"
                            + " 1984).",
                        e)));
    text.append(
        String.format(
            Locale.ROOT,
            " Intervals given for single animals are %s %% prediction intervals from Student's t;"
                + " limits were back-transformed as they are. %s",
            number(100 * asked.level()),
            correction(line, correction)));
    text.append(" Computed with Comparanda ").append(version).append('.');
    return text.toString();
  }

  private static String method(FittedLine line) {
    return switch (line.method()) {
      case OLS -> "ordinary least squares";
      case SMA -> "standardised major axis (a line not made to predict)";
      case MA -> "major axis (a line not made to predict)";
      case PGLS ->
          "generalised least squares on a tree with λ by maximum likelihood"
              + line.lambda().value().map(l -> " (λ = " + number(l) + "; Pagel 1999)").orElse("");
    };
  }

  private static String scale(LineScale scale) {
    return switch (scale) {
      case LN -> "natural logarithms";
      case LOG10 -> "logarithms to base 10";
      case RAW -> "values as measured";
    };
  }

  private static String ranges(FittedLine line) {
    return line.xRange().stream()
        .map(r -> r.predictor() + " " + number(r.low()) + " to " + number(r.high()))
        .collect(Collectors.joining(", "));
  }

  private static String formula(FittedLine line) {
    String log =
        switch (line.scale()) {
          case LN -> "ln ";
          case LOG10 -> "log10 ";
          case RAW -> "";
        };
    String slopes =
        line.slopes().stream()
            .map(
                s ->
                    " + "
                        + number(s.value())
                        + s.standardError().value().map(e -> " (SE " + number(e) + ")").orElse("")
                        + " "
                        + log
                        + s.of())
            .collect(Collectors.joining());
    return log + line.question().predict() + " = " + number(line.intercept().value()) + slopes;
  }

  private static String correction(FittedLine line, Correction correction) {
    String what =
        switch (correction) {
          case NAIVE -> "Estimates are medians: no correction was applied";
          case LOGNORMAL -> "Estimates were multiplied by exp(s²/2) (Baskerville 1972)";
          case SMEARING -> "Estimates were multiplied by the smearing factor (Duan 1983)";
          case RATIO -> "Estimates were multiplied by the ratio factor (Snowdon 1991)";
        };
    String factor =
        line.corrections()
            .value()
            .filter(f -> correction != Correction.NAIVE)
            .map(f -> ", " + number(correction.factor(f)))
            .orElse("");
    return what + factor + ".";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.5g", value);
  }
}
