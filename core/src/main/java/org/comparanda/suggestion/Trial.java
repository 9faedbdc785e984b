package org.comparanda.suggestion;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.taxon.TaxonName;

/**
 * What the shelf says of its own animals, each left out in turn. Counted by animal (the mean of its
 * sides); with {@link Counting#BONES} everything but {@code animals} counts bones.
 *
 * @param element which bone
 * @param measurements the set
 * @param method the method, with the reason it was chosen
 * @param priors named
 * @param animals animals offered
 * @param hits largest share on the true taxon
 * @param taxa the same per taxon, alphabetical
 * @param table true taxon → suggested taxon → count
 * @param rows one per bone offered
 * @param bones hits counted by bone
 * @param logScore mean natural log of the true taxon's share (floored at 1e-15)
 * @param brier mean Σ(share − truth)²
 * @param calibratedList how the calibrated list did
 * @param reliability largest shares in bands, and how often they were right
 */
public record Trial(
    ElementKey element,
    List<MeasurementCode> measurements,
    String method,
    String priors,
    int animals,
    Proportion hits,
    List<TaxonRate> taxa,
    Map<TaxonName, Map<TaxonName, Integer>> table,
    List<TrialRow> rows,
    Proportion bones,
    Outcome<Double> logScore,
    Outcome<Double> brier,
    Outcome<ListQuality> calibratedList,
    List<ShareBand> reliability) {
  public Trial {
    reliability = List.copyOf(reliability);
    measurements = List.copyOf(measurements);
    taxa = List.copyOf(taxa);
    rows = List.copyOf(rows);
    Map<TaxonName, Map<TaxonName, Integer>> sorted = new TreeMap<>();
    table.forEach((t, row) -> sorted.put(t, Collections.unmodifiableMap(new TreeMap<>(row))));
    table = Collections.unmodifiableMap(sorted);
  }

  /**
   * Hits of one taxon.
   *
   * @param hits of so many true ones, how many were called so
   * @param called of so many called so, how many are
   */
  public record TaxonRate(TaxonName taxon, Proportion hits, Proportion called) {}

  /**
   * Animals whose largest share lies in one band: an honest share is right as often as it says.
   *
   * @param from lowest share of the band
   * @param below first share above it; the last band holds 1, too
   * @param meanShare mean of the largest shares in it
   * @param hits of so many animals, those whose largest share was that of their own taxon
   */
  public record ShareBand(double from, double below, double meanShare, Proportion hits) {}

  /**
   * How the calibrated list did.
   *
   * @param holdsTruth how often it held the true taxon
   * @param meanLength taxa on it, on average
   */
  public record ListQuality(Proportion holdsTruth, double meanLength) {}
}
