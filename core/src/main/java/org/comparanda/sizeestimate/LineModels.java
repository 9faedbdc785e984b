package org.comparanda.sizeestimate;

import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.phylo.PhyloTree;

/** Fits the line that a question asks for. */
final class LineModels {
  private LineModels() {}

  /** A fitted model and the points that it stands on: the taxon means where it stands on a tree. */
  record Fitted(LineRows rows, LineModel model) {}

  static Outcome<Fitted> fit(SizeQuestion question, LineRows rows, Optional<PhyloTree> tree) {
    if (rows.points().isEmpty()) {
      return Outcome.none(
          "No animal has " + question.predict() + " together with " + question.from() + ".",
          "Choose other measurements or more taxa, or measure animals that lack them.");
    }
    return switch (question.line()) {
      case OLS ->
          OlsModel.fit(question.from(), rows.design(question.scale()))
              .then(model -> Outcome.of(new Fitted(rows, model)));
      case SMA, MA, PGLS -> Outcome.none("This line can't be fitted yet.", "Ask for ols.");
    };
  }
}
