package org.comparanda.cli;

import java.util.Locale;
import java.util.stream.Collectors;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.HonestDigits;
import org.comparanda.sizeestimate.LineCoefficient;
import org.comparanda.sizeestimate.PredictorRange;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.PredictionInterval;

/** A size line and its estimates as plain text. */
record SizeText(Terminal terminal, FittedLine line) {
  void writeLine() {
    terminal.say(
        line.question().predict()
            + " from "
            + String.join(", ", line.question().from())
            + ": "
            + word(line.method())
            + " line on "
            + word(line.scale())
            + " values, n = "
            + line.n()
            + (line.taxa().isEmpty() ? "" : ", " + Count.of(line.taxa().size(), "taxon", "taxa"))
            + ".");
    coefficient("intercept", line.intercept());
    line.slopes().forEach(s -> coefficient("slope on " + s.of(), s));
    terminal.say(
        "  residual standard error "
            + Figures.five(line.residualStandardError())
            + " on "
            + line.degreesOfFreedom()
            + " degrees of freedom; r squared "
            + number(line.rSquared()));
    terminal.say(
        "  held out: mean absolute error "
            + number(line.meanAbsolutePercentError())
            + " %, root of PRESS/n "
            + number(line.pressRootMeanSquare()));
    terminal.say(
        "  range " + line.xRange().stream().map(SizeText::range).collect(Collectors.joining("; ")));
    line.notes().forEach(n -> terminal.say("  " + n));
    terminal.say("");
  }

  void write(String bone, Outcome<SizeEstimate> outcome) {
    terminal.say(
        outcome.fold(
            e -> estimate(bone, e),
            n -> bone + ": not estimable. " + n.reason() + " " + n.remedy()));
    outcome.value().ifPresent(e -> e.warnings().forEach(w -> terminal.say("  Careful: " + w)));
  }

  private String estimate(String bone, SizeEstimate e) {
    String unit = line.unit().isEmpty() ? "" : " " + line.unit();
    return e.prediction()
        .<String>fold(
            p ->
                bone
                    + ": "
                    + within(e, p)
                    + unit
                    + ", "
                    + level(p)
                    + " prediction interval "
                    + digits(p).text(p.lower())
                    + " to "
                    + digits(p).text(p.upper())
                    + unit
                    + " (correction "
                    + e.correction().word()
                    + ")",
            none ->
                bone
                    + ": "
                    + Figures.five(e.estimate())
                    + unit
                    + "; no interval: "
                    + none.reason());
  }

  private static String within(SizeEstimate e, PredictionInterval p) {
    return digits(p).text(e.estimate());
  }

  private static HonestDigits digits(PredictionInterval p) {
    return HonestDigits.of(p.lower(), p.upper());
  }

  private static String level(PredictionInterval p) {
    return Figures.five(100 * p.level()) + " %";
  }

  private void coefficient(String name, LineCoefficient c) {
    terminal.say(
        "  "
            + name
            + " "
            + Figures.five(c.value())
            + ", standard error "
            + number(c.standardError())
            + c.interval95()
                .<String>fold(
                    i -> ", 95 % " + Figures.five(i.lower()) + " to " + Figures.five(i.upper()),
                    none -> ""));
  }

  private static String range(PredictorRange r) {
    return r.predictor() + " " + Figures.five(r.low()) + " to " + Figures.five(r.high());
  }

  private static String number(Outcome<Double> outcome) {
    return outcome.fold(Figures::five, none -> "not estimable");
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
