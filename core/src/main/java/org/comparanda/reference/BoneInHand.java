package org.comparanda.reference;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.taxon.TaxonName;

/**
 * The bone that a person holds and asks about.
 *
 * @param id number or label of the bone
 * @param animal set when the bone belongs to an animal on the shelf: that animal is then left out
 *     of every fit, list and picture
 * @param element which bone
 * @param side its side
 * @param portion what of it is there
 * @param state fusion and flags
 * @param values mean (of two) or median (of three) of the accepted takes, mm, or a plain number in
 *     the table's own unit
 * @param taxon what a person says it is, where one does; no suggestion ever looks at it
 */
public record BoneInHand(
    String id,
    Optional<AnimalId> animal,
    ElementKey element,
    Side side,
    Portion portion,
    BoneState state,
    Map<MeasurementCode, Double> values,
    Optional<TaxonName> taxon) {
  public BoneInHand {
    values = Collections.unmodifiableMap(new TreeMap<>(values));
  }

  /** A bone of which nobody has said what it is. */
  public BoneInHand(
      String id,
      Optional<AnimalId> animal,
      ElementKey element,
      Side side,
      Portion portion,
      BoneState state,
      Map<MeasurementCode, Double> values) {
    this(id, animal, element, side, portion, state, values, Optional.empty());
  }
}
