package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.reference.AnimalId;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.taxon.TaxonName;

/**
 * Everything that is asked on the screen.
 *
 * @param predict the quantity wanted, as {@link SizeQuestion} names it
 * @param from the measurement at hand, named the same way
 * @param further measurements of the same animal beside it
 * @param taxa taxa that feed the line
 * @param choice how the lines are fitted
 * @param reading the bone's value, mm or the table's own unit; empty until there is one
 * @param own the animal on the shelf that the bone belongs to; it is left out of everything
 */
public record SizeAsk(
    String predict,
    String from,
    List<Further> further,
    Set<TaxonName> taxa,
    LineChoice choice,
    Optional<Double> reading,
    Optional<AnimalId> own) {
  public SizeAsk {
    further = List.copyOf(further);
    taxa = Set.copyOf(taxa);
  }

  /** The ordinary line of these taxa, no bone yet. */
  static SizeAsk of(String predict, String from, Set<TaxonName> taxa) {
    return new SizeAsk(
        predict,
        from,
        List.of(),
        taxa,
        LineChoice.withDefaults(),
        Optional.empty(),
        Optional.empty());
  }

  /** Another pair of quantities; the bone's values are let go, since they were of another kind. */
  SizeAsk withPair(String wanted, String measured, Set<TaxonName> of) {
    return new SizeAsk(wanted, measured, List.of(), of, choice, Optional.empty(), Optional.empty());
  }

  SizeAsk withTaxa(Set<TaxonName> other) {
    return new SizeAsk(predict, from, further, other, choice, reading, own);
  }

  SizeAsk withChoice(LineChoice other) {
    return new SizeAsk(predict, from, further, taxa, other, reading, own);
  }

  /** What is in hand: its values, and whose bone it is. */
  SizeAsk withHand(Optional<Double> value, List<Further> more, Optional<AnimalId> animal) {
    return new SizeAsk(predict, from, more, taxa, choice, value, animal);
  }

  /** All measurements asked from, the main one first. */
  List<String> allFrom() {
    List<String> all = new ArrayList<>(List.of(from));
    further.forEach(f -> all.add(f.key()));
    return all;
  }

  /** The values that there are, by measurement. */
  Map<String, Double> values() {
    Map<String, Double> values = new LinkedHashMap<>();
    reading.ifPresent(v -> values.put(from, v));
    further.forEach(f -> f.value().ifPresent(v -> values.put(f.key(), v)));
    return values;
  }

  SizeQuestion question(Set<TaxonName> of) {
    return new SizeQuestion(
        predict, allFrom(), of, choice.method(), choice.scale(), choice.level());
  }
}
