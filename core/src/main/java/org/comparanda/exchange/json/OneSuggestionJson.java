package org.comparanda.exchange.json;

import java.io.IOException;
import org.comparanda.suggestion.DrawerEntry;
import org.comparanda.suggestion.NearestAnimal;
import org.comparanda.suggestion.NextMeasurement;
import org.comparanda.suggestion.ProposedName;
import org.comparanda.suggestion.SetAside;
import org.comparanda.suggestion.SizeFreeFit;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.TaxonFit;

/** One suggestion in its documented form. */
final class OneSuggestionJson {
  private OneSuggestionJson() {}

  static void write(JsonText json, Suggestion s) throws IOException {
    json.object()
        .text("bone", s.bone())
        .text("element", s.element())
        .names("measurements", s.measurements())
        .text("answer", s.answer())
        .text("sentence", s.sentence())
        .text("sampleLine", s.sampleLine())
        .names("details", s.details());
    json.array("taxa");
    for (TaxonFit fit : s.taxa()) {
      json.object()
          .text("taxon", fit.taxon())
          .number("share", fit.share())
          .number("typicality", fit.typicality())
          .number("distanceSquared", fit.distanceSquared())
          .count("animals", fit.animals())
          .endObject();
    }
    json.endArray().array("withoutSize");
    for (SizeFreeFit fit : s.withoutSize()) {
      json.object()
          .text("taxon", fit.taxon())
          .number("byProportions", fit.byProportions())
          .number("sizeAdjusted", fit.sizeAdjusted())
          .number("bySize", fit.bySize())
          .endObject();
    }
    json.endArray()
        .names("candidates", s.candidates())
        .names("calibratedList", s.calibratedList())
        .text("calibratedLabel", s.calibratedLabel())
        .optionalText("proposal", s.proposal().map(ProposedName::written));
    lookAndMeasure(json, s);
    json.names("warnings", s.warnings());
    basis(json, s.basis());
    json.endObject();
  }

  private static void lookAndMeasure(JsonText json, Suggestion s) throws IOException {
    json.array("drawer");
    for (DrawerEntry entry : s.drawer()) {
      json.object()
          .text("taxon", entry.taxon())
          .text("standing", entry.standing())
          .text("sentence", entry.sentence())
          .endObject();
    }
    json.endArray().array("nearest");
    for (NearestAnimal animal : s.nearest()) {
      json.object()
          .text("animal", animal.animal())
          .text("taxon", animal.taxon())
          .optionalText("drawer", animal.drawer())
          .number("distance", animal.distance())
          .endObject();
    }
    json.endArray().array("next");
    for (NextMeasurement next : s.next()) {
      json.object()
          .text("measurement", next.measurement())
          .number("gain", next.gain())
          .text("sentence", next.sentence())
          .endObject();
    }
    json.endArray();
  }

  private static void basis(JsonText json, Suggestion.Basis basis) throws IOException {
    json.object("basis")
        .count("animals", basis.animals())
        .count("taxa", basis.taxa())
        .text("priors", basis.priors())
        .text("method", basis.method())
        .text("missing", basis.missing().way())
        .text("sample", basis.missing().words())
        .count("wholeAnimals", basis.missing().wholeAnimals())
        .optionalNumber("lowestTypicality", basis.missing().lowestTypicality())
        .optionalText("leftOut", basis.leftOut())
        .array("setAside");
    for (SetAside aside : basis.setAside()) {
      json.object().text("taxon", aside.taxon()).text("reason", aside.reason()).endObject();
    }
    json.endArray().text("shelfVersion", basis.shelfVersion());
    RulesJson.thresholds(json, basis.thresholds());
    json.endObject();
  }
}
