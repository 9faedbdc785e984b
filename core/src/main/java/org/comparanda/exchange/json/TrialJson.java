package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.comparanda.statistics.Proportion;
import org.comparanda.suggestion.MethodScore;
import org.comparanda.suggestion.SecondOpinions;
import org.comparanda.suggestion.StrangerTrial;
import org.comparanda.suggestion.Trial;
import org.comparanda.suggestion.TrialRow;
import org.comparanda.taxon.TaxonName;

/** Writes a trial, with what it says of strangers where that was asked. */
public final class TrialJson {
  private final ProgramVersion program;

  public TrialJson(ProgramVersion program) {
    this.program = program;
  }

  /** A trial of the shelf's own animals. Errors: {@link IOException} if it can't be written. */
  public void write(Writer writer, Trial trial) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.object();
      trial(json, trial);
      json.endObject();
    }
  }

  /** A trial with each taxon off the shelf in turn. */
  public void write(Writer writer, StrangerTrial strangers) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.object();
      trial(json, strangers.trial());
      StrangerTrial.Known known = strangers.known();
      json.object("known")
          .count("bones", known.bones())
          .count("fitsOneRight", known.fitsOneRight())
          .count("fitsOneWrong", known.fitsOneWrong())
          .endObject();
      json.object("stranger");
      counts(json, strangers.stranger());
      json.array("taxa");
      for (StrangerTrial.Stranger taxon : strangers.taxa()) {
        json.object().text("taxon", taxon.taxon());
        counts(json, taxon);
        json.endObject();
      }
      json.endArray().endObject().endObject();
    }
  }

  /** All methods compared by outer folds. */
  public void write(Writer writer, SecondOpinions opinions) throws IOException {
    try (JsonText json = new JsonText(writer)) {
      json.object()
          .text("program", program.program())
          .text("version", program.version())
          .text("element", opinions.element())
          .names("measurements", opinions.measurements())
          .count("animals", opinions.animals())
          .count("folds", opinions.folds())
          .count("seed", opinions.seed())
          .text("byRule", opinions.byRule())
          .text("shelfVersion", opinions.shelfVersion())
          .array("methods");
      for (MethodScore score : opinions.methods()) {
        json.object()
            .text("method", score.method().name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .count("animals", score.hits().tries())
            .count("hits", score.hits().hits())
            .wilson95(score.hits())
            .number("logScore", score.logScore())
            .number("brier", score.brier())
            .endObject();
      }
      json.endArray().endObject();
    }
  }

  private static void counts(JsonText json, StrangerTrial.Stranger s) throws IOException {
    json.count("bones", s.bones())
        .count("fitsOne", s.fitsOne())
        .count("plainShare95", s.plainShare95())
        .count("nothingFits", s.nothingFits());
  }

  private void trial(JsonText json, Trial trial) throws IOException {
    json.text("program", program.program())
        .text("version", program.version())
        .text("element", trial.element())
        .names("measurements", trial.measurements())
        .text("method", trial.method())
        .text("priors", trial.priors())
        .count("animals", trial.animals())
        .count("hits", trial.hits().hits());
    hitRate(json, trial.hits());
    json.wilson95(trial.hits()).array("taxa");
    for (Trial.TaxonRate taxon : trial.taxa()) {
      json.object()
          .text("taxon", taxon.taxon())
          .count("animals", taxon.hits().tries())
          .count("hits", taxon.hits().hits())
          .wilson95(taxon.hits())
          .object("called")
          .count("animals", taxon.called().tries())
          .count("hits", taxon.called().hits())
          .wilson95(taxon.called())
          .endObject()
          .endObject();
    }
    json.endArray();
    table(json, trial.table());
    rows(json, trial);
    json.object("bones")
        .count("bones", trial.bones().tries())
        .count("hits", trial.bones().hits())
        .endObject()
        .number("logScore", trial.logScore())
        .number("brier", trial.brier());
    calibratedList(json, trial);
    json.array("reliability");
    for (Trial.ShareBand band : trial.reliability()) {
      json.object()
          .number("from", band.from())
          .number("below", band.below())
          .number("meanShare", band.meanShare())
          .count("animals", band.hits().tries())
          .count("hits", band.hits().hits())
          .wilson95(band.hits())
          .endObject();
    }
    json.endArray();
  }

  private static void hitRate(JsonText json, Proportion hits) throws IOException {
    if (hits.rate().isPresent()) {
      json.number("hitRate", hits.rate().getAsDouble());
    } else {
      json.name("hitRate").couldNot("No animal was offered.", "Add animals to the shelf.");
    }
  }

  private static void table(JsonText json, Map<TaxonName, Map<TaxonName, Integer>> table)
      throws IOException {
    json.object("table");
    for (Map.Entry<TaxonName, Map<TaxonName, Integer>> row : table.entrySet()) {
      json.object(row.getKey().value());
      for (Map.Entry<TaxonName, Integer> cell : row.getValue().entrySet()) {
        json.count(cell.getKey().value(), cell.getValue());
      }
      json.endObject();
    }
    json.endObject();
  }

  private static void rows(JsonText json, Trial trial) throws IOException {
    json.array("rows");
    for (TrialRow row : trial.rows()) {
      json.object()
          .text("animal", row.animal())
          .text("side", row.side().name().toLowerCase(Locale.ROOT).replace('_', ' '))
          .text("taxon", row.taxon());
      Optional<TaxonName> suggested = row.suggested();
      if (suggested.isPresent()) {
        json.text("suggested", suggested.get())
            .number("share", row.share())
            .number("typicality", row.typicality());
      } else {
        for (String field : new String[] {"suggested", "share", "typicality"}) {
          json.name(field)
              .couldNot(
                  "Nothing could be fitted without this animal.",
                  "Add animals, or leave measurements out.");
        }
      }
      json.names("measurements", row.measurements()).endObject();
    }
    json.endArray();
  }

  private static void calibratedList(JsonText json, Trial trial) throws IOException {
    Optional<Trial.ListQuality> quality = trial.calibratedList().value();
    json.name("calibratedList");
    if (quality.isEmpty()) {
      json.couldNot(trial.calibratedList());
      return;
    }
    Proportion truth = quality.get().holdsTruth();
    json.object();
    if (truth.rate().isPresent()) {
      json.number("coverage", truth.rate().getAsDouble());
    } else {
      json.name("coverage").couldNot("No animal was offered.", "Add animals to the shelf.");
    }
    json.wilson95(truth).number("meanLength", quality.get().meanLength()).endObject();
  }
}
