package org.comparanda.register;

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
import org.comparanda.reference.ShelfBone;
import org.comparanda.taxon.TaxonName;

/** Invented animals. */
public final class Invented {
  private Invented() {}

  /** A ewe with a humerus of that side. */
  public static AnimalCard sheep(String number, Side side, Map<MeasurementCode, Double> values) {
    return AnimalCard.of(
        Animal.blank(new AnimalId(number))
            .withTaxon(Optional.of(new TaxonName("Ovis aries")))
            .withAgeClass("adult")
            .withBones(
                List.of(
                    new ShelfBone(
                        new ElementKey("humerus"), side, Portion.WHOLE, Set.<Flag>of(), values))));
  }

  public static MeasurementCode code(String code) {
    return new MeasurementCode(code);
  }
}
