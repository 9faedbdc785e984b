package org.comparanda.gui.sizedesk;

import java.util.Locale;
import java.util.stream.Collectors;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineCoefficient;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.LineScale;
import org.comparanda.taxon.TaxonName;

/** A paragraph for the methods section, ready to paste: sample, formula, interval, program. */
final class MethodsText {
  private static final int DIGITS = 5;
  private final Sheet sheet;
  private final String version;

  MethodsText(Sheet sheet, String version) {
    this.sheet = sheet;
    this.version = version;
  }

  String of(FittedLine line) {
    Words words = sheet.words();
    Locale locale = sheet.locale();
    Numbers numbers = new Numbers(locale);
    String taxa = line.taxa().stream().map(TaxonName::value).collect(Collectors.joining(", "));
    String range =
        words.get(
            "range",
            sheet.across().measured(line.xRange().get(0).low(), locale),
            sheet.across().measured(line.xRange().get(0).high(), locale));
    StringBuilder text = new StringBuilder();
    text.append(
        words.get(
            "methods.line",
            sheet.predict().name(),
            sheet.from().name(),
            words.get("methods.method." + line.method().name().toLowerCase(Locale.ROOT)),
            words.get("scale." + line.scale().name().toLowerCase(Locale.ROOT)),
            line.n(),
            taxa,
            range));
    text.append(' ').append(words.get("methods.formula", formula(line, numbers)));
    String errors =
        line.slopes()
            .get(0)
            .standardError()
            .fold(e -> words.get("methods.error", numbers.fixed(e, DIGITS)), none -> "");
    text.append(errors.isEmpty() ? "" : " " + errors);
    text.append(' ')
        .append(
            words.get(
                "methods.residual",
                numbers.fixed(line.residualStandardError(), 4),
                line.degreesOfFreedom(),
                line.rSquared().fold(r -> numbers.fixed(r, 3), none -> "–")));
    line.meanAbsolutePercentError()
        .value()
        .ifPresent(p -> text.append(' ').append(words.get("methods.heldout", numbers.fixed(p, 1))));
    if (line.method() == LineMethod.OLS) {
      text.append(' ')
          .append(words.get("methods.interval", Math.round(100 * line.question().level()) + " %"));
    }
    if (line.scale() != LineScale.RAW) {
      text.append(' ').append(words.get("methods." + correction(line)));
    }
    text.append(' ').append(words.get("methods.program", version));
    return sheet.note().isEmpty() ? text.toString() : text + " " + sheet.note();
  }

  private static String correction(FittedLine line) {
    return line.correction() == Correction.NAIVE
        ? "median"
        : "corrected." + line.correction().word();
  }

  /** {@code ln(Body length in mm) = 1.234 + 0.987 · ln(Mandible ML in mm)}. */
  private String formula(FittedLine line, Numbers numbers) {
    LineCoefficient slope = line.slopes().get(0);
    String sign = slope.value() < 0 ? " − " : " + ";
    return scaled(line, sheet.predict())
        + " = "
        + numbers.fixed(line.intercept().value(), DIGITS)
        + sign
        + numbers.fixed(Math.abs(slope.value()), DIGITS)
        + " · "
        + scaled(line, sheet.from());
  }

  private String scaled(FittedLine line, Quantity quantity) {
    String inUnit =
        quantity.unit().isEmpty()
            ? quantity.name()
            : sheet.words().get("methods.unit", quantity.name(), quantity.unit());
    return switch (line.scale()) {
      case LN -> "ln(" + inUnit + ")";
      case LOG10 -> "log10(" + inUnit + ")";
      case RAW -> inUnit;
    };
  }
}
