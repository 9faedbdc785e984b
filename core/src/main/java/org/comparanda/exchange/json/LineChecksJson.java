package org.comparanda.exchange.json;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineChecks;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Diagnostics;
import org.comparanda.statistics.line.EqualSpread;
import org.comparanda.statistics.line.HeldOutCoverage;
import org.comparanda.statistics.line.ShapiroWilk;

/** Writes what shows whether a line can be trusted. */
record LineChecksJson(JsonText json) {
  void write(FittedLine line, LineChecks checks) throws IOException {
    json.object();
    Optional<ShapiroWilk> normal = checks.normality().value();
    json.name("normality");
    if (normal.isPresent()) {
      json.object().number("w", normal.get().w()).number("p", normal.get().p()).endObject();
    } else {
      json.couldNot(checks.normality());
    }
    Optional<EqualSpread> spread = checks.equalSpread().value();
    json.name("equalSpread");
    if (spread.isPresent()) {
      json.object()
          .number("statistic", spread.get().statistic())
          .count("degreesOfFreedom", spread.get().degreesOfFreedom())
          .number("p", spread.get().p())
          .endObject();
    } else {
      json.couldNot(checks.equalSpread());
    }
    coverage(checks.coverage());
    robust(checks.robust());
    taxa(checks.taxa());
    Optional<Diagnostics> rows = line.diagnostics().value();
    if (rows.isPresent()) {
      json.number("press", rows.get().press());
      rows(line.points(), rows.get());
    }
    json.endObject();
  }

  private void coverage(Outcome<HeldOutCoverage> outcome) throws IOException {
    Optional<HeldOutCoverage> coverage = outcome.value();
    json.name("heldOutCoverage");
    if (coverage.isEmpty()) {
      json.couldNot(outcome);
      return;
    }
    json.object()
        .number("level", coverage.get().level())
        .count("inside", coverage.get().inside().hits())
        .count("of", coverage.get().inside().tries())
        .wilson95(coverage.get().inside())
        .endObject();
  }

  private void robust(Outcome<LineChecks.Robust> outcome) throws IOException {
    Optional<LineChecks.Robust> robust = outcome.value();
    json.name("robust");
    if (robust.isEmpty()) {
      json.couldNot(outcome);
      return;
    }
    json.object();
    numbers("slopes", robust.get().slopes());
    json.names("setAside", robust.get().setAside().stream().map(LinePoint::label).toList());
    json.endObject();
  }

  private void taxa(List<LineChecks.TaxonLeftOut> taxa) throws IOException {
    json.array("taxaLeftOut");
    for (LineChecks.TaxonLeftOut out : taxa) {
      json.object().text("taxon", out.taxon()).count("animals", out.animals());
      Optional<List<Double>> slopes = out.slopes().value();
      if (slopes.isPresent()) {
        numbers("slopes", slopes.get());
      } else {
        json.name("slopes").couldNot(out.slopes());
      }
      json.number("percentAtMiddle", out.percentAtMiddle()).endObject();
    }
    json.endArray();
  }

  private void rows(List<LinePoint> points, Diagnostics diagnostics) throws IOException {
    json.array("rows");
    for (int i = 0; i < points.size(); i++) {
      Diagnostics.Row row = diagnostics.rows().get(i);
      json.object()
          .text("animal", points.get(i).label())
          .number("fitted", row.fitted())
          .number("residual", row.residual())
          .number("leverage", row.leverage())
          .number("standardised", row.standardised())
          .number("studentised", row.studentised())
          .number("cooksDistance", row.cooksDistance())
          .number("heldOutFit", row.heldOutFit())
          .endObject();
    }
    json.endArray();
  }

  private void numbers(String name, List<Double> values) throws IOException {
    json.array(name);
    for (double value : values) {
      json.number(value);
    }
    json.endArray();
  }
}
