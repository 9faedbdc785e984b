package org.comparanda.sizeestimate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.comparanda.taxon.TaxonName;

/** A paragraph for the methods section of a paper: sample, formula, interval, correction. */
public final class MethodsParagraph {
  private MethodsParagraph() {}

  /**
   * The paragraph, in English.
   *
   * @param line the line used, with its correction
   * @param names how a reader knows a quantity that was asked, for example {@code body_mass}
   * @param version version of this program
   */
  public static String of(FittedLine line, UnaryOperator<String> names, String version) {
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
            names.apply(asked.predict()),
            asked.from().stream().map(names).collect(Collectors.joining(", ")),
            method(line),
            scale(asked.scale()),
            line.n(),
            points,
            taxa,
            ranges(line, names)));
    text.append(' ').append(formula(line, names)).append('.');
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
    text.append(interval(line));
    if (line.corrections().value().isPresent()) {
      text.append(' ').append(correction(line, line.correction()));
    }
    text.append(" Computed with Comparanda ").append(version).append('.');
    return text.toString();
  }

  private static String method(FittedLine line) {
    return switch (line.method()) {
      case OLS -> "ordinary least squares";
      case SMA -> "standardised major axis (a line not made to predict)";
      case MA -> "major axis (a line not made to predict)";
      case INVERSE ->
          "ordinary least squares of the measurement on the quantity wanted, read backwards,";
      case PGLS ->
          "generalised least squares on a tree with λ by maximum likelihood"
              + line.lambda().value().map(l -> " (λ = " + number(l) + "; Pagel 1999)").orElse("");
    };
  }

  private static String interval(FittedLine line) {
    String level = number(100 * line.question().level());
    return switch (line.method()) {
      case SMA, MA -> "";
      case INVERSE -> " Intervals are Fieller's " + level + " % limits (Fieller 1954).";
      case OLS, PGLS ->
          " Intervals given for single animals are "
              + level
              + " % prediction intervals from Student's t; limits were back-transformed as they"
              + " are.";
    };
  }

  private static String scale(LineScale scale) {
    return switch (scale) {
      case LN -> "natural logarithms";
      case LOG10 -> "logarithms to base 10";
      case RAW -> "values as measured";
    };
  }

  private static String ranges(FittedLine line, UnaryOperator<String> names) {
    return line.xRange().stream()
        .map(r -> names.apply(r.predictor()) + " " + number(r.low()) + " to " + number(r.high()))
        .collect(Collectors.joining(", "));
  }

  private static String formula(FittedLine line, UnaryOperator<String> names) {
    boolean turned = line.method() == LineMethod.INVERSE;
    String y = turned ? line.question().from().get(0) : line.question().predict();
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
                        + names.apply(s.of()))
            .collect(Collectors.joining());
    return log + names.apply(y) + " = " + number(line.intercept().value()) + slopes;
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
    return new BigDecimal(value).round(new MathContext(5)).stripTrailingZeros().toPlainString();
  }
}
