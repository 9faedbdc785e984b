package org.comparanda.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.HonestDigits;
import org.comparanda.sizeestimate.LineCoefficient;
import org.comparanda.sizeestimate.PredictorRange;
import org.comparanda.sizeestimate.SeveralBones;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.SizesDisagree;
import org.comparanda.sizeestimate.TreeFigures;
import org.comparanda.sizeestimate.UndecidedTaxon;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.PredictionInterval;
import org.comparanda.taxon.TaxonName;

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
    line.onTree().value().ifPresent(this::tree);
    line.notes().forEach(n -> terminal.say("  " + n));
    terminal.say("");
  }

  void write(Outcome<SeveralBones> outcome) {
    terminal.say(
        "  "
            + outcome.<String>fold(
                s ->
                    s.best().question().from().size() > 1
                        ? "gain over the best single one ("
                            + s.bestSingle().question().from().get(0)
                            + "): held-out error "
                            + Figures.five(s.gainPercent())
                            + " % smaller"
                        : "too few animals have all measurements (five for each are needed); the"
                            + " best single one is "
                            + s.bestSingle().question().from().get(0),
                n -> n.reason() + " " + n.remedy()));
  }

  void write(String bone, UndecidedTaxon undecided, Map<TaxonName, Double> shares) {
    terminal.say(
        bone
            + ": "
            + undecided
                .mixture()
                .<String>fold(
                    m ->
                        "taxon undecided, "
                            + digits(m.prediction()).text(m.median())
                            + unit()
                            + ", "
                            + level(m.prediction())
                            + " interval of the mixture "
                            + digits(m.prediction()).text(m.prediction().lower())
                            + " to "
                            + digits(m.prediction()).text(m.prediction().upper())
                            + unit(),
                    n -> "not estimable. " + n.reason() + " " + n.remedy()));
    undecided
        .byTaxon()
        .forEach(
            (taxon, size) ->
                terminal.say(
                    size.<String>fold(
                        e -> estimate("  " + taxon + share(shares, taxon), e),
                        n ->
                            "  "
                                + taxon
                                + share(shares, taxon)
                                + ": not estimable. "
                                + n.reason())));
  }

  private static String share(Map<TaxonName, Double> shares, TaxonName taxon) {
    return " (share " + Figures.chance(shares.getOrDefault(taxon, 0.0)) + ")";
  }

  private String unit() {
    return line.unit().isEmpty() ? "" : " " + line.unit();
  }

  void write(String bone, Outcome<SizeEstimate> outcome, List<SizesDisagree> disagree) {
    disagree.forEach(d -> terminal.say("Careful: " + d.sentence()));
    terminal.say(
        outcome.fold(
            e -> estimate(bone, e),
            n -> bone + ": not estimable. " + n.reason() + " " + n.remedy()));
    outcome.value().ifPresent(e -> e.warnings().forEach(w -> terminal.say("  Careful: " + w)));
  }

  private String estimate(String bone, SizeEstimate e) {
    String unit = unit();
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
                    + factor(e)
                    + ")",
            none ->
                bone
                    + ": "
                    + Figures.five(e.estimate())
                    + unit
                    + "; no interval: "
                    + none.reason());
  }

  private static String factor(SizeEstimate e) {
    return e.correction() == Correction.NAIVE ? "" : ", factor " + Figures.five(e.factor());
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

  private void tree(TreeFigures tree) {
    terminal.say(
        "  λ "
            + Figures.five(tree.lambda())
            + ", log-likelihood "
            + Figures.five(tree.logLikelihood())
            + "; slope through independent contrasts "
            + tree.contrasts()
                .<String>fold(
                    c ->
                        Figures.five(c.slope().value())
                            + ", standard error "
                            + Figures.five(c.slope().standardError()),
                    n -> "not estimable. " + n.reason()));
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
