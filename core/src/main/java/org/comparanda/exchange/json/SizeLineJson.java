package org.comparanda.exchange.json;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.sizeestimate.ContrastLine;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineChecks;
import org.comparanda.sizeestimate.LineCoefficient;
import org.comparanda.sizeestimate.PredictorRange;
import org.comparanda.sizeestimate.TreeFigures;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.BackTransform;
import org.comparanda.statistics.line.ConfidenceInterval;

/** Writes a size line: what was asked, its coefficients and errors, what it stands on. */
record SizeLineJson(JsonText json) {
  void write(FittedLine line, Optional<Outcome<LineChecks>> checks) throws IOException {
    json.object()
        .text("method", word(line.method()))
        .text("scale", word(line.scale()))
        .text("predict", line.question().predict())
        .names("from", line.question().from())
        .count("n", line.n())
        .count("taxa", line.taxa().size())
        .names("taxonNames", line.taxa())
        .number("intercept", line.intercept().value())
        .number("interceptStandardError", line.intercept().standardError());
    slopes(line.slopes());
    json.number("residualStandardError", line.residualStandardError())
        .count("degreesOfFreedom", line.degreesOfFreedom())
        .number("rSquared", line.rSquared());
    ranges(line.xRange());
    corrections(line.corrections());
    json.number("meanAbsolutePercentError", line.meanAbsolutePercentError())
        .number("pressRootMeanSquare", line.pressRootMeanSquare())
        .number("lambda", line.lambda());
    tree(line.onTree());
    json.number("level", line.question().level())
        .text("unit", line.unit())
        .names("notes", line.notes());
    if (checks.isPresent()) {
      json.name("diagnostics");
      Optional<LineChecks> there = checks.get().value();
      if (there.isPresent()) {
        new LineChecksJson(json).write(line, there.get());
      } else {
        json.couldNot(checks.get());
      }
    }
    json.endObject();
  }

  private void tree(Outcome<TreeFigures> outcome) throws IOException {
    Optional<TreeFigures> tree = outcome.value();
    if (tree.isEmpty()) {
      return;
    }
    json.number("logLikelihood", tree.get().logLikelihood()).name("contrasts");
    Optional<ContrastLine> contrasts = tree.get().contrasts().value();
    if (contrasts.isEmpty()) {
      json.couldNot(tree.get().contrasts());
      return;
    }
    json.object()
        .number("slope", contrasts.get().slope().value())
        .number("slopeStandardError", contrasts.get().slope().standardError())
        .array("pairs");
    for (ContrastLine.Pair pair : contrasts.get().pairs()) {
      json.object()
          .names("clade", pair.clade())
          .number("x", pair.x())
          .number("y", pair.y())
          .number("variance", pair.variance())
          .endObject();
    }
    json.endArray().endObject();
  }

  private void slopes(List<LineCoefficient> slopes) throws IOException {
    if (slopes.size() == 1) {
      LineCoefficient slope = slopes.get(0);
      json.number("slope", slope.value())
          .number("slopeStandardError", slope.standardError())
          .name("slopeInterval95");
      interval(slope.interval95());
      return;
    }
    json.array("slope");
    for (LineCoefficient slope : slopes) {
      json.number(slope.value());
    }
    json.endArray().array("slopeStandardError");
    for (LineCoefficient slope : slopes) {
      json.number(slope.standardError());
    }
    json.endArray().array("slopeInterval95");
    for (LineCoefficient slope : slopes) {
      interval(slope.interval95());
    }
    json.endArray();
  }

  private void interval(Outcome<ConfidenceInterval> interval) throws IOException {
    Optional<ConfidenceInterval> there = interval.value();
    if (there.isPresent()) {
      json.limits(there.get().lower(), there.get().upper());
    } else {
      json.couldNot(interval);
    }
  }

  private void ranges(List<PredictorRange> ranges) throws IOException {
    if (ranges.size() == 1) {
      json.limits("xRange", ranges.get(0).low(), ranges.get(0).high());
      return;
    }
    json.array("xRange");
    for (PredictorRange range : ranges) {
      json.limits(range.low(), range.high());
    }
    json.endArray();
  }

  private void corrections(Outcome<BackTransform> corrections) throws IOException {
    json.name("corrections");
    Optional<BackTransform> factors = corrections.value();
    if (factors.isEmpty()) {
      json.couldNot(corrections);
      return;
    }
    json.object()
        .number("naive", factors.get().naive())
        .number("lognormal", factors.get().lognormal())
        .number("smearing", factors.get().smearing())
        .number("ratio", factors.get().ratio())
        .endObject();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
