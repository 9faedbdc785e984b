package org.comparanda.exchange.table;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.check.BoneEntry;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.register.CardField;
import org.comparanda.taxon.TaxonName;

/** One row, understood. Text that is missing is the empty text. */
record BoneRow(
    long number,
    String animal,
    String bone,
    Optional<TaxonName> taxon,
    ElementKey element,
    Side side,
    Portion portion,
    BoneState state,
    String sex,
    String ageClass,
    String origin,
    String drawer,
    String remarks,
    Optional<Double> bodyLengthMm,
    Optional<Double> bodyMassG,
    Map<CardField, String> card,
    Map<MeasurementCode, Double> values) {
  BoneRow {
    card = Map.copyOf(card);
    values = java.util.Collections.unmodifiableMap(new TreeMap<>(values));
  }

  /** The row as the integrity list looks at it. */
  BoneEntry entry() {
    return new BoneEntry(
        number,
        animal.isEmpty() ? "row " + number : animal,
        taxon,
        element,
        side,
        portion,
        flags(),
        ageClass,
        remarks,
        values);
  }

  /** Its flags, with what its ends say. */
  Set<Flag> flags() {
    Set<Flag> flags = new LinkedHashSet<>(state.flags());
    if (state.proximal() == Fusion.UNFUSED || state.distal() == Fusion.UNFUSED) {
      flags.add(Flag.UNFUSED);
    }
    return flags;
  }

  /** Whether it speaks of an animal alone: no element is named and nothing is measured. */
  boolean boneless() {
    return element.equals(ElementKey.UNNAMED) && values.isEmpty() && !animal.isEmpty();
  }

  /** What the same row says of another element. */
  BoneRow of(ElementKey other, Side itsSide, Map<MeasurementCode, Double> itsValues) {
    return new BoneRow(
        number,
        animal,
        bone,
        taxon,
        other,
        itsSide,
        portion,
        state,
        sex,
        ageClass,
        origin,
        drawer,
        remarks,
        bodyLengthMm,
        bodyMassG,
        card,
        itsValues);
  }
}
