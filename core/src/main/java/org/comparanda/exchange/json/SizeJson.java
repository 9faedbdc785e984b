package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.comparanda.sizeestimate.ContrastLine;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineChecks;
import org.comparanda.sizeestimate.LineCoefficient;
import org.comparanda.sizeestimate.OutsideRange;
import org.comparanda.sizeestimate.PredictorRange;
import org.comparanda.sizeestimate.SeveralBones;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.SizesDisagree;
import org.comparanda.sizeestimate.TreeFigures;
import org.comparanda.sizeestimate.UndecidedTaxon;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.BackTransform;
import org.comparanda.statistics.line.ConfidenceInterval;
import org.comparanda.statistics.line.PredictionInterval;
import org.comparanda.taxon.TaxonName;

/** Writes a size line, then its estimates one after the other. */
public final class SizeJson implements AutoCloseable {
  private final JsonText json;

  /** Begins the text. Errors: {@link IOException} if it can't be written. */
  public SizeJson(Writer writer, ProgramVersion program, SizeReport report) throws IOException {
    json = new JsonText(writer);
    json.object().text("program", program.program()).text("version", program.version());
    json.name("line");
    Optional<FittedLine> fitted = report.line().value();
    if (fitted.isPresent()) {
      line(fitted.get(), report.checks());
    } else {
      json.couldNot(report.line());
    }
    if (report.several().isPresent()) {
      several(report.several().get());
    }
    json.array("estimates");
  }

  private void several(Outcome<SeveralBones> outcome) throws IOException {
    json.name("severalBones");
    Optional<SeveralBones> several = outcome.value();
    if (several.isEmpty()) {
      json.couldNot(outcome);
      return;
    }
    json.object()
        .names("used", several.get().best().question().from())
        .text("bestSingle", several.get().bestSingle().question().from().get(0))
        .number("bestSinglePressRootMeanSquare", several.get().bestSingle().pressRootMeanSquare())
        .number("gainPercent", several.get().gainPercent())
        .endObject();
  }

  /** One bone whose taxon is not decided, with each candidate's share. */
  public void write(String bone, UndecidedTaxon undecided, Map<TaxonName, Double> shares)
      throws IOException {
    json.object().text("bone", bone);
    Optional<UndecidedTaxon.Mixture> mixture = undecided.mixture().value();
    if (mixture.isPresent()) {
      json.number("estimate", mixture.get().median())
          .limits(
              "prediction", mixture.get().prediction().lower(), mixture.get().prediction().upper())
          .number("uncoveredShare", mixture.get().uncoveredShare());
    } else {
      json.name("estimate").couldNot(undecided.mixture());
    }
    json.array("byTaxon");
    for (Map.Entry<TaxonName, Outcome<SizeEstimate>> entry : undecided.byTaxon().entrySet()) {
      json.object()
          .text("taxon", entry.getKey())
          .number("share", shares.getOrDefault(entry.getKey(), 0.0));
      Optional<SizeEstimate> estimate = entry.getValue().value();
      if (estimate.isPresent()) {
        estimate(estimate.get());
      } else {
        json.name("estimate").couldNot(entry.getValue());
      }
      json.endObject();
    }
    json.endArray().endObject();
  }

  /** One bone more, or several of one animal with the pairs of them that can't be one. */
  public void write(String bone, Outcome<SizeEstimate> outcome, List<SizesDisagree> disagree)
      throws IOException {
    json.object().text("bone", bone);
    if (!disagree.isEmpty()) {
      json.array("notOneAnimal");
      for (SizesDisagree pair : disagree) {
        json.object()
            .text("one", pair.one())
            .text("other", pair.other())
            .number("chance", pair.chance())
            .text("sentence", pair.sentence())
            .endObject();
      }
      json.endArray();
    }
    Optional<SizeEstimate> estimate = outcome.value();
    if (estimate.isPresent()) {
      estimate(estimate.get());
    } else {
      json.name("estimate").couldNot(outcome);
    }
    json.endObject();
  }

  private void estimate(SizeEstimate e) throws IOException {
    json.number("estimate", e.estimate())
        .text("correction", e.correction().word())
        .number("correctionFactor", e.factor());
    Optional<PredictionInterval> prediction = e.prediction().value();
    json.name("prediction");
    if (prediction.isPresent()) {
      json.limits(prediction.get().lower(), prediction.get().upper());
    } else {
      json.couldNot(e.prediction());
    }
    Optional<ConfidenceInterval> confidence = e.confidence().value();
    json.name("confidence");
    if (confidence.isPresent()) {
      json.limits(confidence.get().lower(), confidence.get().upper());
    } else {
      json.couldNot(e.confidence());
    }
    Optional<OutsideRange> outside = e.outsideRange();
    if (outside.isPresent()) {
      json.object("outsideRange")
          .text("side", word(outside.get().end()))
          .number("percent", outside.get().percent())
          .text("measurement", outside.get().predictor())
          .text("sentence", outside.get().sentence())
          .endObject();
    } else {
      json.nothing("outsideRange");
    }
    json.text("reach", word(e.reach())).names("warnings", e.warnings());
  }

  private void line(FittedLine line, Optional<Outcome<LineChecks>> checks) throws IOException {
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

  @Override
  public void close() throws IOException {
    json.endArray().endObject();
    json.close();
  }
}
