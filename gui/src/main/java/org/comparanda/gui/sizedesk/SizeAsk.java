package org.comparanda.gui.sizedesk;

import java.util.Optional;
import java.util.Set;
import org.comparanda.reference.AnimalId;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.LineScale;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.taxon.TaxonName;

/**
 * Everything that is chosen on the screen.
 *
 * @param predict the quantity wanted, as {@link SizeQuestion} names it
 * @param from the measurement at hand, named the same way
 * @param taxa taxa that feed the line
 * @param beside what the second line is fitted to
 * @param method how the lines are fitted
 * @param scale on which scale
 * @param correction which factor moves the estimate
 * @param level level of the intervals
 * @param reading the bone's value, mm or the table's own unit; empty until there is one
 * @param own the animal on the shelf that the bone belongs to; it is left out of everything
 */
public record SizeAsk(
    String predict,
    String from,
    Set<TaxonName> taxa,
    Beside beside,
    LineMethod method,
    LineScale scale,
    Correction correction,
    double level,
    Optional<Double> reading,
    Optional<AnimalId> own) {
  public SizeAsk {
    taxa = Set.copyOf(taxa);
  }

  /** Ordinary least squares on natural logs at 95 %, of these taxa. */
  static SizeAsk of(String predict, String from, Set<TaxonName> taxa) {
    return new SizeAsk(
        predict,
        from,
        taxa,
        Beside.NOTHING,
        LineMethod.OLS,
        LineScale.LN,
        Correction.NAIVE,
        0.95,
        Optional.empty(),
        Optional.empty());
  }

  /** Another pair of quantities; the bone's value is let go, since it was of another kind. */
  SizeAsk withPair(String wanted, String measured, Set<TaxonName> of) {
    return new SizeAsk(
        wanted,
        measured,
        of,
        beside,
        method,
        scale,
        correction,
        level,
        Optional.empty(),
        Optional.empty());
  }

  SizeAsk withTaxa(Set<TaxonName> other) {
    return new SizeAsk(
        predict, from, other, beside, method, scale, correction, level, reading, own);
  }

  SizeAsk withBeside(Beside other) {
    return new SizeAsk(predict, from, taxa, other, method, scale, correction, level, reading, own);
  }

  SizeAsk withMethod(LineMethod other) {
    return new SizeAsk(predict, from, taxa, beside, other, scale, correction, level, reading, own);
  }

  SizeAsk withScale(LineScale other) {
    return new SizeAsk(predict, from, taxa, beside, method, other, correction, level, reading, own);
  }

  SizeAsk withCorrection(Correction other) {
    return new SizeAsk(predict, from, taxa, beside, method, scale, other, level, reading, own);
  }

  SizeAsk withReading(Optional<Double> other) {
    return new SizeAsk(predict, from, taxa, beside, method, scale, correction, level, other, own);
  }

  SizeAsk withOwn(Optional<AnimalId> other) {
    return new SizeAsk(
        predict, from, taxa, beside, method, scale, correction, level, reading, other);
  }

  SizeQuestion question(Set<TaxonName> of) {
    return new SizeQuestion(predict, java.util.List.of(from), of, method, scale, level);
  }
}
