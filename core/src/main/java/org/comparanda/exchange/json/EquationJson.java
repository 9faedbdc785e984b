package org.comparanda.exchange.json;

import java.io.IOException;
import java.io.Writer;
import java.util.Optional;
import org.comparanda.sizeestimate.EquationAnswer;
import org.comparanda.sizeestimate.EquationOnShelf;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.PredictionInterval;

/** Writes a published equation, how it does on the shelf, then its values one after the other. */
public final class EquationJson implements AutoCloseable {
  private final JsonText json;

  /** Begins the text; without a shelf {@code onShelf} is null. Errors: {@link IOException}. */
  public EquationJson(
      Writer writer,
      ProgramVersion program,
      PublishedEquation equation,
      Optional<Outcome<EquationOnShelf>> onShelf)
      throws IOException {
    json = new JsonText(writer);
    json.object().text("program", program.program()).text("version", program.version());
    json.object("equation")
        .text("key", equation.key())
        .text("name", equation.name())
        .text("taxon", equation.taxon())
        .text("appliesTo", equation.appliesTo())
        .text("predicts", equation.predicts())
        .text("unit", equation.resultUnit())
        .text("from", equation.predictor().name())
        .text("fromUnit", equation.predictor().unit())
        .text("citation", equation.citation())
        .text("howVerified", equation.howVerified())
        .endObject();
    if (onShelf.isEmpty()) {
      json.nothing("onShelf");
    } else {
      onShelf(onShelf.get());
    }
    json.array("estimates");
  }

  private void onShelf(Outcome<EquationOnShelf> outcome) throws IOException {
    json.name("onShelf");
    Optional<EquationOnShelf> there = outcome.value();
    if (there.isEmpty()) {
      json.couldNot(outcome);
      return;
    }
    json.object()
        .count("animals", there.get().animals())
        .number("medianAbsolutePercentError", there.get().error().medianAbsolute())
        .number("meanAbsolutePercentError", there.get().error().meanAbsolute())
        .number("meanPercentError", there.get().error().mean())
        .text("sentence", there.get().sentence())
        .endObject();
  }

  /** One bone more, in the unit of the equation. */
  public void write(String bone, Outcome<EquationAnswer> outcome) throws IOException {
    json.object().text("bone", bone);
    Optional<EquationAnswer> answer = outcome.value();
    if (answer.isEmpty()) {
      json.name("estimate").couldNot(outcome).endObject();
      return;
    }
    json.number("estimate", answer.get().value()).name("prediction");
    Optional<PredictionInterval> interval = answer.get().prediction().value();
    if (interval.isPresent()) {
      json.limits(interval.get().lower(), interval.get().upper());
    } else {
      json.couldNot(answer.get().prediction());
    }
    json.names("warnings", answer.get().warnings()).endObject();
  }

  @Override
  public void close() throws IOException {
    json.endArray().endObject();
    json.close();
  }
}
