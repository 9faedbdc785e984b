package org.comparanda.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

/** Remedies that can be done at once, on invented animals. */
class CorrectionTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final MeasurementCode GL = new MeasurementCode("GL");
  private static final TaxonName SHEEP = new TaxonName("Ovis aries");

  @Test
  void aValueInInchesIsPutInMillimetresAndItsFindingIsGone() {
    Animal slipped = animal("HB-6", "Ovis aries", "", bone(Side.LEFT, 5.945));
    Finding found = only(FindingKind.UNIT_SLIP, slipped);
    Animal right = found.correction().orElseThrow().apply(slipped).value().orElseThrow();
    assertEquals(151.003, right.bones().get(0).values().get(GL)); // 5.945 × 25.4, three decimals
    assertTrue(findings(right).stream().noneMatch(f -> f.kind() == FindingKind.UNIT_SLIP));
  }

  @Test
  void aMisspeltNameIsPutRight() {
    Animal misspelt = animal("HB-6", "Ovis arees", "", bone(Side.LEFT, 150.0));
    Finding found = only(FindingKind.SPELLED_TWO_WAYS, misspelt);
    Animal right = found.correction().orElseThrow().apply(misspelt).value().orElseThrow();
    assertEquals(Optional.of(SHEEP), right.taxon());
  }

  @Test
  void aYoungAnimalIsFlaggedAsAWhole() {
    Animal young =
        animal("HB-6", "Ovis aries", "", bone(Side.LEFT, 150.0)).withAgeClass("juvenile");
    Finding found = only(FindingKind.YOUNG_IN_FIT, young);
    Animal right = found.correction().orElseThrow().apply(young).value().orElseThrow();
    assertEquals(Set.of(Flag.JUVENILE), right.flags());
  }

  @Test
  void aCastIsFlaggedOnlyWhereOneBoneCanBeMeant() {
    Animal one = animal("HB-6", "Ovis aries", "plaster cast", bone(Side.LEFT, 150.0));
    Finding found = only(FindingKind.CAST_IN_FIT, one);
    Animal right = found.correction().orElseThrow().apply(one).value().orElseThrow();
    assertEquals(Set.of(Flag.CAST), right.bones().get(0).flags());
    Animal two =
        animal(
            "HB-6", "Ovis aries", "plaster cast", bone(Side.LEFT, 150.0), bone(Side.RIGHT, 150.0));
    assertEquals(Optional.empty(), only(FindingKind.CAST_IN_FIT, two).correction());
  }

  @Test
  void nothingIsPutInPlaceOfAValueThatChangedMeanwhile() {
    Animal slipped = animal("HB-6", "Ovis aries", "", bone(Side.LEFT, 5.945));
    Correction correction = only(FindingKind.UNIT_SLIP, slipped).correction().orElseThrow();
    assertEquals(
        "HB-6 is no longer as it was when the list was made. Nothing was stored. Look again.",
        correction
            .apply(slipped.withBones(List.of(bone(Side.LEFT, 151.0))))
            .fold(done -> "done", none -> none.reason() + " " + none.remedy()));
  }

  private static Finding only(FindingKind kind, Animal odd) {
    List<Finding> found = findings(odd).stream().filter(f -> f.kind() == kind).toList();
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }

  /** Of a shelf of five sheep and this animal. */
  private static List<Finding> findings(Animal odd) {
    Shelf shelf =
        new Shelf(
            List.of(
                animal("HB-1", "Ovis aries", "", bone(Side.LEFT, 149.0)),
                animal("HB-2", "Ovis aries", "", bone(Side.LEFT, 152.0)),
                animal("HB-3", "Ovis aries", "", bone(Side.LEFT, 147.0)),
                animal("HB-4", "Ovis aries", "", bone(Side.LEFT, 155.0)),
                animal("HB-5", "Ovis aries", "", bone(Side.LEFT, 151.0)),
                odd));
    return AnimalChecks.findings(ShelfEntries.of(shelf, TABLES.protocol(), TABLES.taxa()));
  }

  private static ShelfBone bone(Side side, double gl) {
    return new ShelfBone(new ElementKey("humerus"), side, Portion.WHOLE, Set.of(), Map.of(GL, gl));
  }

  private static Animal animal(String number, String taxon, String remarks, ShelfBone... bones) {
    return Animal.blank(new AnimalId(number))
        .withTaxon(Optional.of(new TaxonName(taxon)))
        .withAgeClass("adult")
        .withRemarks(remarks)
        .withBones(List.of(bones));
  }
}
