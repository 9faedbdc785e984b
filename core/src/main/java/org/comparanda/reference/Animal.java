package org.comparanda.reference;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.Flag;
import org.comparanda.taxon.TaxonName;

/**
 * One comparative skeleton: one individual, all its bones.
 *
 * @param id catalogue number
 * @param taxon as recorded; empty for a table without one (only size lines can use it)
 * @param source where it is kept
 * @param drawer where its bones lie; empty unless its source is the own drawer
 * @param sex as recorded, empty when not known
 * @param ageClass as recorded, empty when not known
 * @param origin wild, captive or empty when not known
 * @param bodyLengthMm body length, mm
 * @param bodyMassG body mass, g
 * @param flags flags of the whole animal; each also holds for all its bones
 * @param remarks free text
 * @param bones its measured bones
 */
public record Animal(
    AnimalId id,
    Optional<TaxonName> taxon,
    Source source,
    Optional<String> drawer,
    String sex,
    String ageClass,
    String origin,
    Optional<Double> bodyLengthMm,
    Optional<Double> bodyMassG,
    Set<Flag> flags,
    String remarks,
    List<ShelfBone> bones) {
  public Animal {
    flags = Set.copyOf(flags);
    bones = List.copyOf(bones);
  }

  /** Whether any bone of this animal may feed a fit. */
  public boolean feedsFits() {
    return flags.stream().noneMatch(Flag::keepsOutOfFits);
  }

  public Animal withTaxon(Optional<TaxonName> other) {
    return new Animal(
        id,
        other,
        source,
        drawer,
        sex,
        ageClass,
        origin,
        bodyLengthMm,
        bodyMassG,
        flags,
        remarks,
        bones);
  }

  public Animal withSource(Source other) {
    return new Animal(
        id,
        taxon,
        other,
        drawer,
        sex,
        ageClass,
        origin,
        bodyLengthMm,
        bodyMassG,
        flags,
        remarks,
        bones);
  }

  public Animal withDrawer(Optional<String> other) {
    return new Animal(
        id,
        taxon,
        source,
        other,
        sex,
        ageClass,
        origin,
        bodyLengthMm,
        bodyMassG,
        flags,
        remarks,
        bones);
  }

  public Animal withSex(String other) {
    return new Animal(
        id,
        taxon,
        source,
        drawer,
        other,
        ageClass,
        origin,
        bodyLengthMm,
        bodyMassG,
        flags,
        remarks,
        bones);
  }

  public Animal withAgeClass(String other) {
    return new Animal(
        id,
        taxon,
        source,
        drawer,
        sex,
        other,
        origin,
        bodyLengthMm,
        bodyMassG,
        flags,
        remarks,
        bones);
  }

  public Animal withOrigin(String other) {
    return new Animal(
        id,
        taxon,
        source,
        drawer,
        sex,
        ageClass,
        other,
        bodyLengthMm,
        bodyMassG,
        flags,
        remarks,
        bones);
  }

  public Animal withBodyLengthMm(Optional<Double> other) {
    return new Animal(
        id, taxon, source, drawer, sex, ageClass, origin, other, bodyMassG, flags, remarks, bones);
  }

  public Animal withBodyMassG(Optional<Double> other) {
    return new Animal(
        id,
        taxon,
        source,
        drawer,
        sex,
        ageClass,
        origin,
        bodyLengthMm,
        other,
        flags,
        remarks,
        bones);
  }

  public Animal withFlags(Set<Flag> other) {
    return new Animal(
        id,
        taxon,
        source,
        drawer,
        sex,
        ageClass,
        origin,
        bodyLengthMm,
        bodyMassG,
        other,
        remarks,
        bones);
  }

  public Animal withRemarks(String other) {
    return new Animal(
        id,
        taxon,
        source,
        drawer,
        sex,
        ageClass,
        origin,
        bodyLengthMm,
        bodyMassG,
        flags,
        other,
        bones);
  }

  public Animal withBones(List<ShelfBone> other) {
    return new Animal(
        id,
        taxon,
        source,
        drawer,
        sex,
        ageClass,
        origin,
        bodyLengthMm,
        bodyMassG,
        flags,
        remarks,
        other);
  }
}
