package org.comparanda.sizeestimate;

import java.util.List;
import java.util.Set;
import org.comparanda.taxon.TaxonName;

/**
 * What is asked of the Size Desk.
 *
 * @param predict the quantity wanted: {@code body_length}, {@code body_mass}, or a measurement
 *     written {@code element.code} (just {@code code} where the table has one element)
 * @param from the predictors, written the same way, at least one
 * @param taxa taxa that feed the line; empty means all
 * @param line how the line is fitted
 * @param scale scale of the fit
 * @param level level of the intervals, between 0 and 1
 */
public record SizeQuestion(
    String predict,
    List<String> from,
    Set<TaxonName> taxa,
    LineMethod line,
    LineScale scale,
    double level) {
  public SizeQuestion {
    from = List.copyOf(from);
    taxa = Set.copyOf(taxa);
    if (from.isEmpty() || !(level > 0 && level < 1)) {
      throw new IllegalArgumentException(
          "A size question needs a predictor and a level in (0, 1).");
    }
  }

  /** Ordinary least squares on natural logs at 95 %, all taxa. */
  public static SizeQuestion of(String predict, String from) {
    return new SizeQuestion(predict, List.of(from), Set.of(), LineMethod.OLS, LineScale.LN, 0.95);
  }

  /** The same question of other taxa; empty means all. */
  public SizeQuestion withTaxa(Set<TaxonName> other) {
    return new SizeQuestion(predict, from, other, line, scale, level);
  }

  /** The same question from other predictors. */
  public SizeQuestion withFrom(List<String> other) {
    return new SizeQuestion(predict, other, taxa, line, scale, level);
  }
}
