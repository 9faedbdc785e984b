package org.comparanda.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.comparanda.bone.ElementKey;
import org.comparanda.reference.Shelf;
import org.comparanda.taxon.TaxonName;

/**
 * What to prepare next: how much five more animals of a taxon would raise the held-out log score of
 * an element.
 *
 * <p>The score is the mean, over the taxa of the element with equal weight, of the natural log of
 * the true taxon's predictive share of a new bone. Where a taxon's true mean lies is drawn from
 * what its n animals leave open, N(mean, W/n); the mean after m more is (n·mean + m·(truth +
 * noise/√m))/(n + m). Seeded draws, the same for every entry. Checked by simulation (see
 * docs/methods.md).
 *
 * @param more animals more
 * @param draws how often the truth and a bone of each taxon are drawn
 * @param seed of the draws
 */
public record Wanted(int more, int draws, long seed) {
  public static Wanted withDefaults() {
    return new Wanted(5, 400, 1);
  }

  public Wanted withDraws(int other) {
    return new Wanted(more, other, seed);
  }

  /**
   * One line of the list.
   *
   * @param gain nats of the element's score
   * @param reason why, in words
   */
  public record Entry(TaxonName taxon, ElementKey element, double gain, String reason) {
    /** Less is not worth naming, per cent. */
    private static final double NAMED = 0.01;

    /**
     * The gain in plain words: by how many per cent of itself the share grows that a bone of the
     * element gives to its own taxon, in the geometric mean over the taxa.
     */
    private double growth() {
      return 100 * Math.expm1(gain);
    }

    /** The growth as text. */
    public String growthText() {
      double growth = growth();
      return growth < NAMED
          ? "< 0.01 %"
          : String.format(Locale.ROOT, growth < 1 ? "%.2f %%" : "%.1f %%", growth);
    }
  }

  /**
   * Largest gain first; elements with one taxon, or too few animals for a spread, are not on it.
   */
  public List<Entry> of(Shelf shelf) {
    return of(shelf, (element, number, of) -> {});
  }

  /** The same, saying how far it is; none where it is stopped. */
  public List<Entry> of(Shelf shelf, ElementWatch watch) {
    List<Entry> entries = new ArrayList<>();
    List<ElementKey> elements = Stock.of(shelf).elements();
    for (int i = 0; i < elements.size(); i++) {
      ElementKey element = elements.get(i);
      watch.begins(element, i + 1, elements.size());
      TaxonMeans.of(shelf, element).ifPresent(m -> entries.addAll(entries(element, m, watch)));
      if (watch.stopped()) {
        return List.of();
      }
    }
    entries.sort(
        Comparator.comparingDouble((Entry e) -> -e.gain())
            .thenComparing(Entry::taxon)
            .thenComparing(Entry::element));
    return List.copyOf(entries);
  }

  private List<Entry> entries(ElementKey element, TaxonMeans means, ElementWatch watch) {
    int taxa = means.taxa().size();
    double[] gains = new double[taxa];
    SplittableRandom random = new SplittableRandom(seed);
    for (int draw = 0; draw < draws && !watch.stopped(); draw++) {
      ScoreDraw here = new ScoreDraw(means, more, random);
      double now = here.score(ScoreDraw.NOBODY);
      for (int taxon = 0; taxon < taxa; taxon++) {
        gains[taxon] += (here.score(taxon) - now) / draws;
      }
    }
    List<Entry> entries = new ArrayList<>();
    for (int taxon = 0; taxon < taxa; taxon++) {
      entries.add(new Entry(means.taxa().get(taxon), element, gains[taxon], reason(means, taxon)));
    }
    return entries;
  }

  private static String reason(TaxonMeans means, int taxon) {
    int n = means.animals(taxon);
    return "%d %s now; nearest is %s, of which there are %d."
        .formatted(
            n,
            n == 1 ? "animal" : "animals",
            means.taxa().get(means.nearest(taxon)),
            means.animals(means.nearest(taxon)));
  }
}
