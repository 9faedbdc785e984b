package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Coefficient;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.LinePrediction;
import org.comparanda.statistics.phylo.PhyloFit;
import org.comparanda.statistics.phylo.PhyloLeastSquares;
import org.comparanda.statistics.phylo.PhyloTree;
import org.comparanda.statistics.phylo.TipCovariance;
import org.comparanda.statistics.phylo.TipMatches;
import org.comparanda.taxon.TaxonName;

/** A line between taxa on a tree; its points are taxon means on the scale of the fit. */
record TreeModel(
    List<String> from,
    PhyloFit fit,
    TipCovariance tips,
    Design means,
    Map<TaxonName, Tip> tipOf,
    Outcome<Double> withinVariance)
    implements LineModel {
  private static final int FEWEST_WITHIN = 5;

  TreeModel {
    from = List.copyOf(from);
    tipOf = Map.copyOf(tipOf);
  }

  /** A taxon's row, how many animals stand behind it, and its name on the tree. */
  record Tip(int row, int animals, String name) {}

  static Outcome<LineModels.Fitted> fit(SizeQuestion question, LineRows rows, PhyloTree tree) {
    Map<String, List<LinePoint>> byTaxon = new LinkedHashMap<>();
    for (LinePoint point : rows.points()) {
      if (point.taxon().isEmpty()) {
        return Outcome.none(
            point.label() + " has no taxon, so it has no place on the tree.",
            "Give every animal a taxon.");
      }
      byTaxon.computeIfAbsent(point.taxon().get().value(), t -> new ArrayList<>()).add(point);
    }
    return TipMatches.of(tree, byTaxon.keySet())
        .then(matches -> fit(question, rows, tree, byTaxon, matches));
  }

  private static Outcome<LineModels.Fitted> fit(
      SizeQuestion question,
      LineRows rows,
      PhyloTree tree,
      Map<String, List<LinePoint>> byTaxon,
      TipMatches matches) {
    LineScale scale = question.scale();
    List<LinePoint> means = new ArrayList<>();
    Map<TaxonName, Tip> tipOf = new LinkedHashMap<>();
    for (Map.Entry<String, String> match : matches.tipOf().entrySet()) {
      List<LinePoint> points = byTaxon.getOrDefault(match.getKey(), List.of());
      tipOf.put(
          new TaxonName(match.getKey()), new Tip(means.size(), points.size(), match.getValue()));
      means.add(mean(points, scale));
    }
    List<String> notes = new ArrayList<>(rows.leftOut());
    notes.addAll(TreeNotes.of(matches));
    LineRows meanRows = new LineRows(means, notes);
    return TipCovariance.of(tree, List.copyOf(matches.tipOf().values()))
        .then(
            tips ->
                PhyloLeastSquares.withDefaults()
                    .fit(tips, meanRows.design(scale))
                    .then(
                        fit ->
                            Outcome.of(
                                new LineModels.Fitted(
                                    meanRows,
                                    new TreeModel(
                                        question.from(),
                                        fit,
                                        tips,
                                        meanRows.design(scale),
                                        tipOf,
                                        within(rows, meanRows, fit, scale, tipOf))))));
  }

  @Override
  public LineCoefficient intercept() {
    return coefficient("intercept", fit.intercept());
  }

  @Override
  public List<LineCoefficient> slopes() {
    return IntStream.range(0, from.size())
        .mapToObj(j -> coefficient(from.get(j), fit.slope(j)))
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
  public Outcome<Double> lambda() {
    return Outcome.of(fit.lambda());
  }

  @Override
  public double at(List<Double> x, Optional<TaxonName> taxon) {
    return fit.at(x);
  }

  @Override
  public Outcome<LinePrediction> predict(List<Double> x, Optional<TaxonName> taxon, double level) {
    Optional<Tip> own = taxon.map(tipOf::get);
    if (own.isPresent()) {
      return onOwnTip(own.get(), x, level);
    }
    Optional<TipCovariance.Place> place = taxon.flatMap(t -> tips.placeAlike(t.value()));
    return Outcome.of(
        place.map(p -> fit.predict(p, x, level)).orElseGet(() -> fit.predict(x, level)));
  }

  @Override
  public List<Outcome<Double>> heldOutFits() {
    return IntStream.range(0, means.rows()).mapToObj(i -> Outcome.of(fit.heldOut(i))).toList();
  }

  /**
   * Through the taxon's own mean where the spread within taxa is known; else as if the taxon had no
   * animals, from all others.
   */
  private Outcome<LinePrediction> onOwnTip(Tip tip, List<Double> x, double level) {
    if (withinVariance.value().isPresent()) {
      return Outcome.of(
          fit.predictWithin(tip.row(), tip.animals(), withinVariance.value().get(), x, level));
    }
    return tips.without(tip.row())
        .then(
            others ->
                PhyloLeastSquares.withDefaults()
                    .withLambda(fit.lambda())
                    .fit(others, means.without(tip.row()))
                    .then(
                        refit ->
                            Outcome.of(
                                others
                                    .place(tip.name())
                                    .map(p -> refit.predict(p, x, level))
                                    .orElseGet(() -> refit.predict(x, level)))));
  }

  /** Pooled variance of animals around their taxon's mean and the line's slopes. */
  private static Outcome<Double> within(
      LineRows animals,
      LineRows meanRows,
      PhyloFit fit,
      LineScale scale,
      Map<TaxonName, Tip> tipOf) {
    double squares = 0;
    int df = 0;
    for (LinePoint point : animals.points()) {
      Optional<Tip> tip = point.taxon().map(tipOf::get);
      if (tip.isPresent() && tip.get().animals() > 1) {
        LinePoint mean = meanRows.points().get(tip.get().row());
        double residual = scale.forward(point.y()) - scale.forward(mean.y());
        for (int j = 0; j < point.x().size(); j++) {
          residual -=
              fit.slope(j).value()
                  * (scale.forward(point.x().get(j)) - scale.forward(mean.x().get(j)));
        }
        squares += residual * residual;
        df++;
      }
    }
    df -= (int) tipOf.values().stream().filter(t -> t.animals() > 1).count();
    return df >= FEWEST_WITHIN && squares > 0
        ? Outcome.of(squares / df)
        : Outcome.none(
            "Too few taxa have several animals to know the spread within a taxon.",
            "Measure more animals of each taxon.");
  }

  private static LinePoint mean(List<LinePoint> points, LineScale scale) {
    LinePoint first = points.get(0);
    if (points.size() == 1) {
      return first;
    }
    List<AnimalId> animals = points.stream().flatMap(p -> p.animals().stream()).toList();
    List<Double> x =
        IntStream.range(0, first.x().size())
            .mapToObj(
                j ->
                    scale.back(
                        points.stream()
                            .mapToDouble(p -> scale.forward(p.x().get(j)))
                            .average()
                            .orElseThrow()))
            .toList();
    double y =
        scale.back(points.stream().mapToDouble(p -> scale.forward(p.y())).average().orElseThrow());
    return new LinePoint(animals, first.taxon(), Optional.empty(), x, y);
  }

  private static LineCoefficient coefficient(String of, Coefficient c) {
    return new LineCoefficient(
        of, c.value(), Outcome.of(c.standardError()), Outcome.of(c.interval(0.95)));
  }
}
