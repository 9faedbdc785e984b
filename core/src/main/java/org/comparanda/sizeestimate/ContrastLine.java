package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Coefficient;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.LeastSquares;
import org.comparanda.statistics.phylo.IndependentContrasts;
import org.comparanda.statistics.phylo.PhyloTree;

/**
 * Line through the origin of independent contrasts, on the scale of the fit (Felsenstein 1985).
 *
 * @param slope with its standard error
 * @param pairs one per branching
 */
public record ContrastLine(Coefficient slope, List<Pair> pairs) {
  public ContrastLine {
    pairs = List.copyOf(pairs);
  }

  /**
   * The contrasts of one branching; both signs turn together.
   *
   * @param clade the tips below it, in alphabetical order
   * @param x contrast of the predictor
   * @param y contrast of the quantity wanted
   * @param variance expected variance before both were standardised
   */
  public record Pair(List<String> clade, double x, double y, double variance) {
    public Pair {
      clade = List.copyOf(clade);
    }
  }

  /** Rows of the means in the order of the tips. */
  static Outcome<ContrastLine> of(PhyloTree tree, List<String> tips, Design means) {
    if (means.predictors() != 1) {
      return Outcome.none(
          "Contrasts are told for one predictor.", "Ask from one measurement to see them.");
    }
    Map<String, Double> x = new HashMap<>();
    Map<String, Double> y = new HashMap<>();
    for (int i = 0; i < tips.size(); i++) {
      x.put(tips.get(i), means.x(i, 0));
      y.put(tips.get(i), means.y(i));
    }
    return IndependentContrasts.of(tree, x)
        .then(ofX -> IndependentContrasts.of(tree, y).then(ofY -> line(ofX, ofY)));
  }

  private static Outcome<ContrastLine> line(IndependentContrasts x, IndependentContrasts y) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < x.contrasts().size(); i++) {
      IndependentContrasts.Contrast of = x.contrasts().get(i);
      pairs.add(
          new Pair(
              of.clade().stream().sorted().toList(),
              of.value(),
              y.contrasts().get(i).value(),
              of.variance()));
    }
    Design design =
        Design.of(
            pairs.stream().map(p -> List.of(p.x())).toList(), pairs.stream().map(Pair::y).toList());
    return LeastSquares.throughOrigin()
        .fit(design)
        .then(fit -> Outcome.of(new ContrastLine(fit.slope(0), pairs)));
  }
}
