package org.comparanda.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;

/** Rows of invented bones as the checks see them. */
final class CheckRows {
  static final ReferenceTables TABLES = ReferenceTables.shipped();
  static final String SHEEP = "Ovis aries";

  private CheckRows() {}

  static Finding only(ShelfCheck check, List<BoneEntry> rows) {
    List<Finding> found = check(check, rows);
    assertEquals(1, found.size(), found.toString());
    assertEquals(check.kind(), found.get(0).kind());
    return found.get(0);
  }

  static List<Finding> check(ShelfCheck check, List<BoneEntry> rows) {
    return check.check(new ShelfEntries(rows, TABLES.protocol(), TABLES.taxa()));
  }

  /** Ordinary sheep humeri, spread 2 in 100, seeded. */
  static List<BoneEntry> flock(int animals) {
    SplittableRandom random = new SplittableRandom(3);
    List<BoneEntry> rows = new ArrayList<>();
    for (int i = 0; i < animals; i++) {
      double size = 1 + 0.06 * (random.nextDouble() - 0.5);
      rows.add(
          bone(
              "HB-1" + i,
              SHEEP,
              "humerus",
              Side.LEFT,
              "GL",
              150 * size * (1 + 0.03 * (random.nextDouble() - 0.5)),
              "Bd",
              32 * size * (1 + 0.03 * (random.nextDouble() - 0.5)),
              "SD",
              16 * size * (1 + 0.03 * (random.nextDouble() - 0.5))));
    }
    return rows;
  }

  static BoneEntry bone(
      String animal, String taxon, String element, Side side, Object... codesAndMm) {
    Map<MeasurementCode, Double> values = new TreeMap<>();
    for (int i = 0; i < codesAndMm.length; i += 2) {
      values.put(code(codesAndMm[i].toString()), (Double) codesAndMm[i + 1]);
    }
    return new BoneEntry(
        2,
        animal,
        Optional.of(new TaxonName(taxon)),
        new ElementKey(element),
        side,
        Portion.WHOLE,
        Set.of(),
        "adult",
        "",
        values);
  }

  static BoneEntry entry(
      String animal,
      String taxon,
      String element,
      Set<Flag> flags,
      String age,
      String remarks,
      Map<MeasurementCode, Double> values) {
    return new BoneEntry(
        2,
        animal,
        Optional.of(new TaxonName(taxon)),
        new ElementKey(element),
        Side.LEFT,
        Portion.WHOLE,
        flags,
        age,
        remarks,
        values);
  }

  static MeasurementCode code(String code) {
    return new MeasurementCode(code);
  }
}
