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

  /** One of our own of which nothing else is said yet. */
  public static Animal blank(AnimalId number) {
    return new Animal(
        number,
        Optional.empty(),
        Source.OWN_DRAWER,
        Optional.empty(),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "",
        List.of());
  }

  public Animal withTaxon(Optional<TaxonName> other) {
    Copy copy = new Copy();
    copy.taxon = other;
    return copy.made();
  }

  public Animal withSource(Source other) {
    Copy copy = new Copy();
    copy.source = other;
    return copy.made();
  }

  public Animal withDrawer(Optional<String> other) {
    Copy copy = new Copy();
    copy.drawer = other;
    return copy.made();
  }

  public Animal withSex(String other) {
    Copy copy = new Copy();
    copy.sex = other;
    return copy.made();
  }

  public Animal withAgeClass(String other) {
    Copy copy = new Copy();
    copy.ageClass = other;
    return copy.made();
  }

  public Animal withOrigin(String other) {
    Copy copy = new Copy();
    copy.origin = other;
    return copy.made();
  }

  public Animal withBodyLengthMm(Optional<Double> other) {
    Copy copy = new Copy();
    copy.bodyLengthMm = other;
    return copy.made();
  }

  public Animal withBodyMassG(Optional<Double> other) {
    Copy copy = new Copy();
    copy.bodyMassG = other;
    return copy.made();
  }

  public Animal withFlags(Set<Flag> other) {
    Copy copy = new Copy();
    copy.flags = other;
    return copy.made();
  }

  public Animal withRemarks(String other) {
    Copy copy = new Copy();
    copy.remarks = other;
    return copy.made();
  }

  public Animal withBones(List<ShelfBone> other) {
    Copy copy = new Copy();
    copy.bones = other;
    return copy.made();
  }

  /** This animal while one thing about it is changed. */
  private final class Copy {
    private Optional<TaxonName> taxon = Animal.this.taxon;
    private Source source = Animal.this.source;
    private Optional<String> drawer = Animal.this.drawer;
    private String sex = Animal.this.sex;
    private String ageClass = Animal.this.ageClass;
    private String origin = Animal.this.origin;
    private Optional<Double> bodyLengthMm = Animal.this.bodyLengthMm;
    private Optional<Double> bodyMassG = Animal.this.bodyMassG;
    private Set<Flag> flags = Animal.this.flags;
    private String remarks = Animal.this.remarks;
    private List<ShelfBone> bones = Animal.this.bones;

    Animal made() {
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
          bones);
    }
  }
}
