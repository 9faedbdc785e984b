package org.comparanda.sizeestimate;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.LinePrediction;
import org.comparanda.statistics.phylo.PhyloFit;
import org.comparanda.statistics.phylo.PhyloLeastSquares;
import org.comparanda.statistics.phylo.TipCovariance;
import org.comparanda.taxon.TaxonName;

/** A line between taxa on a tree; its points are taxon means on the scale of the fit. */
record TreeModel(
    List<String> from,
    PhyloFit fit,
    TipCovariance tips,
    Design design,
    TaxonMeans means,
    Outcome<Double> withinVariance,
    Outcome<ContrastLine> contrasts)
    implements LineModel {
  TreeModel {
    from = List.copyOf(from);
  }

  static Outcome<LineModels.Fitted> fit(SizeQuestion question, LineRows rows, LineTree tree) {
    return TaxonMeans.of(rows, tree.tree(), question.scale())
        .then(
            means ->
                TipCovariance.of(tree.tree(), means.tips())
                    .then(tips -> fit(question, rows, tree, means, tips)));
  }

  private static Outcome<LineModels.Fitted> fit(
      SizeQuestion question,
      LineRows animals,
      LineTree tree,
      TaxonMeans means,
      TipCovariance tips) {
    Design design = means.rows().design(question.scale());
    return tree.method()
        .fit(tips, design)
        .then(
            fit ->
                Outcome.of(
                    new LineModels.Fitted(
                        means.rows(),
                        new TreeModel(
                            question.from(),
                            fit,
                            tips,
                            design,
                            means,
                            means.within(animals, fit, question.scale()),
                            ContrastLine.of(tree.tree(), means.tips(), design)))));
  }

  @Override
  public LineCoefficient intercept() {
    return LineCoefficient.of("intercept", fit.intercept());
  }

  @Override
  public List<LineCoefficient> slopes() {
    return IntStream.range(0, from.size())
        .mapToObj(j -> LineCoefficient.of(from.get(j), fit.slope(j)))
        .toList();
  }

  /** σ·√(deepest tip): the spread of a taxon around the line from the root, on the fit's scale. */
  @Override
  public double residualStandardError() {
    return fit.sigma() * Math.sqrt(tips.deepest());
  }

  @Override
  public int degreesOfFreedom() {
    return fit.degreesOfFreedom();
  }

  @Override
  public Outcome<Double> rSquared() {
    return fit.rSquared();
  }

  @Override
  public Outcome<TreeFigures> onTree() {
    return Outcome.of(new TreeFigures(fit.lambda(), fit.logLikelihood(), contrasts));
  }

  @Override
  public Optional<TreePlace> place(Optional<TaxonName> taxon) {
    boolean withAnimals = taxon.flatMap(means::tip).isPresent();
    if (withAnimals && withinVariance.value().isPresent()) {
      return Optional.of(TreePlace.OWN_MEAN);
    }
    boolean there = withAnimals || taxon.flatMap(t -> tips.placeAlike(t.value())).isPresent();
    return Optional.of(there ? TreePlace.EMPTY_TIP : TreePlace.ROOT);
  }

  @Override
  public double at(List<Double> x, Optional<TaxonName> taxon) {
    return fit.at(x);
  }

  @Override
  public Outcome<Placed> predict(List<Double> x, Optional<TaxonName> taxon, double level) {
    Optional<TaxonMeans.Tip> own = taxon.flatMap(means::tip);
    if (own.isPresent()) {
      return onOwnTip(own.get(), x, level).then(p -> Outcome.of(Placed.of(p)));
    }
    Optional<TipCovariance.Place> place = taxon.flatMap(t -> tips.placeAlike(t.value()));
    return Outcome.of(
        Placed.of(place.map(p -> fit.predict(p, x, level)).orElseGet(() -> fit.predict(x, level))));
  }

  @Override
  public List<Outcome<Double>> heldOutFits() {
    return IntStream.range(0, design.rows()).mapToObj(i -> Outcome.of(fit.heldOut(i))).toList();
  }

  /**
   * Through the taxon's own mean where the spread within taxa is known; else as if the taxon had no
   * animals, from all others.
   */
  private Outcome<LinePrediction> onOwnTip(TaxonMeans.Tip tip, List<Double> x, double level) {
    if (withinVariance.value().isPresent()) {
      return Outcome.of(
          fit.predictWithin(tip.row(), tip.animals(), withinVariance.value().get(), x, level));
    }
    return tips.without(tip.row())
        .then(
            others ->
                PhyloLeastSquares.withDefaults()
                    .withLambda(fit.lambda())
                    .fit(others, design.without(tip.row()))
                    .then(
                        refit ->
                            Outcome.of(
                                others
                                    .place(tip.name())
                                    .map(p -> refit.predict(p, x, level))
                                    .orElseGet(() -> refit.predict(x, level)))));
  }
}
