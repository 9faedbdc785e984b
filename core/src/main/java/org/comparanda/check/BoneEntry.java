package org.comparanda.check;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.taxon.TaxonName;

/**
 * One row of the shelf as it stands, sound or not: one bone.
 *
 * @param row row of the table (the header is row 1), or running number in a collection
 * @param animal catalogue number; never blank
 * @param taxon as recorded
 * @param flags of the bone and its animal
 * @param ageClass as recorded, may be empty
 * @param remarks may be empty
 * @param values mm, or plain numbers of the table's own unit
 */
public record BoneEntry(
    long row,
    String animal,
    Optional<TaxonName> taxon,
    ElementKey element,
    Side side,
    Portion portion,
    Set<Flag> flags,
    String ageClass,
    String remarks,
    Map<MeasurementCode, Double> values) {
  public BoneEntry {
    flags = Set.copyOf(flags);
    values = Collections.unmodifiableMap(new TreeMap<>(values));
  }

  /**
   * The value of a measurement that it has. Errors: {@link IllegalArgumentException} without it.
   */
  double value(MeasurementCode code) {
    Double there = values.get(code);
    if (there == null) {
      throw new IllegalArgumentException(bone() + " has no " + code);
    }
    return there;
  }

  /** Element and side in words; the element alone where the side is not known. */
  public String bone() {
    return side == Side.NOT_KNOWN
        ? element.value()
        : element + " " + side.name().toLowerCase(java.util.Locale.ROOT);
  }

  /** Whether its flags let it feed fits. */
  boolean feedsFits() {
    return flags.stream().noneMatch(Flag::keepsOutOfFits);
  }
}
