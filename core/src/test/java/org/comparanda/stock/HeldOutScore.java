package org.comparanda.stock;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.statistics.discriminant.DiscriminantModel;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.Predictive;
import org.comparanda.statistics.discriminant.Priors;
import org.comparanda.taxon.TaxonName;

/**
 * Mean log share of the true taxon over fresh simulated animals, each taxon with the same weight,
 * by the predictive discriminant fitted to the animals with all measurements. Taxa that the shelf
 * before the addition can't fit are left out on both sides.
 */
final class HeldOutScore {
  private static final long FRESH = 900_000;
  private static final int MORE = 5;

  private final List<Shelf> fresh = new ArrayList<>();

  HeldOutScore(int shelves) {
    for (int i = 0; i < shelves; i++) {
      fresh.add(SimulatedShelf.of(FRESH + i));
    }
  }

  /** What the first five animals of the entry on the other shelves add to its element's score. */
  double gain(Shelf shelf, Wanted.Entry entry, List<Shelf> others) {
    Map<TaxonName, List<double[]>> before = rows(List.of(shelf), entry.element());
    Set<TaxonName> scored = new HashSet<>(before.keySet());
    Map<TaxonName, List<double[]>> after = rows(List.of(shelf), entry.element());
    List<double[]> more = rows(others, entry.element()).getOrDefault(entry.taxon(), List.of());
    after
        .computeIfAbsent(entry.taxon(), t -> new ArrayList<>())
        .addAll(more.subList(0, Math.min(MORE, more.size())));
    return score(after, entry.element(), scored) - score(before, entry.element(), scored);
  }

  private double score(
      Map<TaxonName, List<double[]>> rows, ElementKey element, Set<TaxonName> scored) {
    List<TaxonName> taxa = List.copyOf(new TreeSet<>(rows.keySet()));
    GroupedRows.Builder builder = GroupedRows.builder(codes(element).size(), taxa.size());
    int unit = 0;
    for (int g = 0; g < taxa.size(); g++) {
      for (double[] row : rows.get(taxa.get(g))) {
        builder.add(g, unit++, row);
      }
    }
    DiscriminantModel model =
        new Predictive().fit(builder.build(), Priors.equal(taxa.size())).value().orElseThrow();
    Map<TaxonName, List<double[]>> test = rows(fresh, element);
    double sum = 0;
    for (TaxonName taxon : scored) {
      int group = taxa.indexOf(taxon);
      sum +=
          test.get(taxon).stream()
              .mapToDouble(row -> Math.log(Math.max(1e-15, model.shares(row).of(group))))
              .average()
              .orElseThrow();
    }
    return sum / scored.size();
  }

  private Set<MeasurementCode> codes(ElementKey element) {
    Set<MeasurementCode> codes = new TreeSet<>();
    fresh.get(0).animals().stream()
        .flatMap(a -> a.bones().stream())
        .filter(b -> b.element().equals(element))
        .forEach(b -> codes.addAll(b.values().keySet()));
    return codes;
  }

  private Map<TaxonName, List<double[]>> rows(List<Shelf> shelves, ElementKey element) {
    Set<MeasurementCode> codes = codes(element);
    Map<TaxonName, List<double[]>> rows = new TreeMap<>();
    for (Shelf shelf : shelves) {
      for (Animal animal : shelf.animals()) {
        List<ShelfBone> bones =
            animal.bones().stream().filter(b -> Stock.counts(b, element)).toList();
        Map<MeasurementCode, Double> mean = new TreeMap<>();
        for (MeasurementCode code : codes) {
          bones.stream()
              .filter(b -> b.values().containsKey(code))
              .mapToDouble(b -> Math.log(b.values().get(code)))
              .average()
              .ifPresent(v -> mean.put(code, v));
        }
        if (mean.size() == codes.size()) {
          rows.computeIfAbsent(animal.taxon().orElseThrow(), t -> new ArrayList<>())
              .add(mean.values().stream().mapToDouble(v -> v).toArray());
        }
      }
    }
    return rows;
  }
}
