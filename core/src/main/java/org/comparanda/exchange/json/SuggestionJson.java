package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import org.comparanda.suggestion.DrawerEntry;
import org.comparanda.suggestion.NearestAnimal;
import org.comparanda.suggestion.NextMeasurement;
import org.comparanda.suggestion.ProposedName;
import org.comparanda.suggestion.SetAside;
import org.comparanda.suggestion.SizeFreeFit;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.TaxonFit;
import org.comparanda.suggestion.Thresholds;

/** Writes suggestions one after the other, so that a table of any length fits. */
public final class SuggestionJson implements AutoCloseable {
  private final JsonText json;

  /** Begins the text. Errors: {@link IOException} if it can't be written. */
  public SuggestionJson(Writer writer, ProgramVersion program, ShelfInUse shelf)
      throws IOException {
    json = new JsonText(writer);
    json.object().text("program", program.program()).text("version", program.version());
    json.object("shelf")
        .count("animals", shelf.animals())
        .count("taxa", shelf.taxa())
        .names("measurements", shelf.measurements())
        .text("priors", shelf.priors())
        .text("method", shelf.method())
        .endObject();
    json.array("bones");
  }

  /** One bone more. */
  public void write(Suggestion s) throws IOException {
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
    lookAndMeasure(s);
    json.names("warnings", s.warnings());
    basis(s.basis());
    json.endObject();
  }

  private void lookAndMeasure(Suggestion s) throws IOException {
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

  private void basis(Suggestion.Basis basis) throws IOException {
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
    thresholds(basis.thresholds());
    json.endObject();
  }

  private void thresholds(Thresholds limits) throws IOException {
    json.object("thresholds")
        .number("nothingFits", limits.nothingFits())
        .number("poorFit", limits.poorFit())
        .number("oneShare", limits.oneShare())
        .number("candidateShare", limits.candidateShare())
        .number("weakShare", limits.weakShare())
        .number("gateLowerLimit", limits.gateLowerLimit())
        .count("mostNamed", limits.mostNamed())
        .count("degreesNeeded", limits.degreesNeeded())
        .count("ruleOutAnimals", limits.ruleOutAnimals())
        .number("calibratedMiss", limits.calibratedMiss())
        .endObject();
  }

  @Override
  public void close() throws IOException {
    json.endArray().endObject();
    json.close();
  }
}
