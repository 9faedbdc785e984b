package org.comparanda.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Symmetry;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/**
 * Counts specimens (NISP), elements (MNE, MAU) and individuals (MNI) within each place.
 *
 * <p>MNI is the largest, over the elements, of ⌈L / number per side⌉, ⌈R / number per side⌉ and ⌈(L
 * + R + unsided) / number per skeleton⌉, where L, R and unsided are minimum numbers of elements.
 * Age classes are not added and bones are never paired by size.
 */
public final class Tally {
  private final PerSkeleton perSkeleton;

  public Tally(PerSkeleton perSkeleton) {
    this.perSkeleton = perSkeleton;
  }

  /** The tallies of every place, in alphabetical order. */
  public List<PlaceTally> count(List<TallyRow> rows) {
    List<PlaceTally> places = new ArrayList<>();
    grouped(rows, TallyRow::place)
        .forEach(
            (place, here) -> {
              List<TaxonTally> taxa = new ArrayList<>();
              grouped(here, TallyRow::taxon).forEach((taxon, its) -> taxa.add(ofTaxon(taxon, its)));
              places.add(new PlaceTally(place, taxa));
            });
    return places;
  }

  private TaxonTally ofTaxon(TaxonName taxon, List<TallyRow> rows) {
    List<ElementTally> elements = new ArrayList<>();
    List<String> steps = new ArrayList<>();
    int mni = 0;
    for (Map.Entry<ElementKey, List<TallyRow>> entry :
        grouped(rows, TallyRow::element).entrySet()) {
      ElementKey element = entry.getKey();
      MinimumElements mne = MinimumElements.of(entry.getValue());
      Outcome<PerSkeleton.Occurrence> occurrence = perSkeleton.of(taxon, element);
      int nisp = specimens(entry.getValue());
      elements.add(
          new ElementTally(
              element,
              nisp,
              mne.total(),
              occurrence.then(o -> Outcome.of(mne.total() / (double) o.number()))));
      int animals = occurrence.fold(o -> animals(mne, o), none -> mne.total() > 0 ? 1 : 0);
      steps.add(step(element, nisp, mne, occurrence, animals));
      mni = Math.max(mni, animals);
    }
    steps.add("MNI is the largest of these: " + mni + ".");
    return new TaxonTally(taxon, specimens(rows), mni, elements, steps);
  }

  private static int animals(MinimumElements mne, PerSkeleton.Occurrence occurrence) {
    int all = ceiling(mne.total(), occurrence.number());
    if (occurrence.symmetry() == Symmetry.AXIAL || occurrence.number() < 2) {
      return all;
    }
    int perSide = occurrence.number() / 2;
    return Math.max(all, Math.max(ceiling(mne.left(), perSide), ceiling(mne.right(), perSide)));
  }

  private static String step(
      ElementKey element,
      int nisp,
      MinimumElements mne,
      Outcome<PerSkeleton.Occurrence> occurrence,
      int animals) {
    String counted =
        "%s: %d specimens, at least %d left, %d right, %d unsided"
            .formatted(element, nisp, mne.left(), mne.right(), mne.unsided());
    return occurrence.fold(
        o ->
            counted
                + "; %d in one skeleton, so at least %d animals.".formatted(o.number(), animals),
        none -> counted + "; no more than one animal can be told from it: " + none.reason());
  }

  private static int specimens(List<TallyRow> rows) {
    return rows.stream().mapToInt(TallyRow::count).sum();
  }

  private static int ceiling(int count, int of) {
    return (count + of - 1) / of;
  }

  private static <K extends Comparable<K>> Map<K, List<TallyRow>> grouped(
      List<TallyRow> rows, Function<TallyRow, K> key) {
    return rows.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList()));
  }
}
