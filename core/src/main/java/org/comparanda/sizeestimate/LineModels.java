package org.comparanda.sizeestimate;

import java.util.Optional;
import java.util.function.Function;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.AxisLine;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.MajorAxis;
import org.comparanda.statistics.line.StandardisedMajorAxis;

/** Fits the line that a question asks for. */
final class LineModels {
  private LineModels() {}

  /** A fitted model and the points that it stands on: the taxon means where it stands on a tree. */
  record Fitted(LineRows rows, LineModel model) {}

  static Outcome<Fitted> fit(SizeQuestion question, LineRows rows, Optional<LineTree> tree) {
    if (rows.points().isEmpty()) {
      return Outcome.none(
          "No animal has " + question.predict() + " together with " + question.from() + ".",
          "Choose other measurements or more taxa, or measure animals that lack them.");
    }
    return switch (question.line()) {
      case OLS ->
          OlsModel.fit(question.from(), rows.design(question.scale()))
              .then(model -> Outcome.of(new Fitted(rows, model)));
      case INVERSE ->
          InverseModel.fit(question.predict(), rows.design(question.scale()))
              .then(model -> Outcome.of(new Fitted(rows, model)));
      case SMA -> axis(question, rows, StandardisedMajorAxis.withDefaults()::fit);
      case MA -> axis(question, rows, MajorAxis.withDefaults()::fit);
      case PGLS ->
          tree.map(t -> TreeModel.fit(question, rows, t))
              .orElseGet(
                  () ->
                      Outcome.none(
                          "A line across taxa needs a tree.", "Give a tree in Newick notation."));
    };
  }

  private static Outcome<Fitted> axis(
      SizeQuestion question, LineRows rows, Function<Design, Outcome<AxisLine>> method) {
    return AxisModel.fit(question.from(), rows.design(question.scale()), method)
        .then(model -> Outcome.of(new Fitted(rows, model)));
  }
}
