package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.phylo.PhyloFit;
import org.comparanda.statistics.phylo.PhyloTree;
import org.comparanda.statistics.phylo.TipMatches;
import org.comparanda.taxon.TaxonName;

/**
 * The animals of a line brought together by taxon, for a tree whose tips are taxa.
 *
 * @param rows one mean per taxon, means taken on the scale of the fit
 * @param tips the tip of each row
 * @param tipOf where each taxon stands
 */
record TaxonMeans(LineRows rows, List<String> tips, Map<TaxonName, Tip> tipOf) {
  private static final int FEWEST_WITHIN = 5;

  TaxonMeans {
    tips = List.copyOf(tips);
    tipOf = Map.copyOf(tipOf);
  }

  /** A taxon's row, how many animals stand behind it, and its name on the tree. */
  record Tip(int row, int animals, String name) {}

  Optional<Tip> tip(TaxonName taxon) {
    return Optional.ofNullable(tipOf.get(taxon));
  }

  static Outcome<TaxonMeans> of(LineRows rows, PhyloTree tree, LineScale scale) {
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
        .then(matches -> Outcome.of(of(rows, byTaxon, matches, scale)));
  }

  private static TaxonMeans of(
      LineRows rows, Map<String, List<LinePoint>> byTaxon, TipMatches matches, LineScale scale) {
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
    return new TaxonMeans(new LineRows(means, notes), List.copyOf(matches.tipOf().values()), tipOf);
  }

  /** Pooled variance of animals around their taxon's mean and the line's slopes. */
  Outcome<Double> within(LineRows animals, PhyloFit fit, LineScale scale) {
    double squares = 0;
    int df = 0;
    for (LinePoint point : animals.points()) {
      Optional<Tip> tip = point.taxon().map(tipOf::get);
      if (tip.isPresent() && tip.get().animals() > 1) {
        LinePoint mean = rows.points().get(tip.get().row());
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
}
