package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.OutsideRange;
import org.comparanda.sizeestimate.SeveralBones;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.SizesDisagree;
import org.comparanda.sizeestimate.UndecidedTaxon;
import org.comparanda.statistics.Outcome;
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
      new SizeLineJson(json).write(fitted.get(), report.checks());
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

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public void close() throws IOException {
    json.endArray().endObject();
    json.close();
  }
}
