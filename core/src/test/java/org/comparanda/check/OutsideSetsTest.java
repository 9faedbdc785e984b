package org.comparanda.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.measurement.MeasurementCode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The integrity list on data that nobody of this project measured or made up. */
class OutsideSetsTest {
  // Sound as published, so nearly every finding is false; fewer than 2 rows in 100 are allowed.
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "iris.csv, species, id, 'sepal_length,sepal_width,petal_length,petal_width', 150",
    "penguins.csv, species, id, 'bill_length,bill_depth,flipper_length,body_mass', 344",
    "crabs.csv, group, id, 'FL,RW,CL,CW,BD', 200",
    "microtus_reference.csv, species, id,"
        + " 'M1Left,M2Left,M3Left,Foramen,Pbone,Length,Height,Rostrum', 45",
    "wolves.csv, group, id, 'palatal_length,postpalatal_length,zygomatic_width,"
        + "palatal_width_outside_m1,palatal_width_inside_m2,postglenoid_foramina_width,"
        + "interorbital_width,braincase_width,crown_length', 25",
    "tortues.csv, sex, id, 'length_mm,width_mm,height_mm', 48",
  })
  void fewerThanTwoRowsInAHundredAreNamed(
      String file, String taxon, String animal, String only, int rows) {
    ShelfEntries entries =
        OutsideEntries.read(
            file, Map.of("taxon", taxon, "animal", animal), List.of(only.split(",")));
    assertEquals(rows, entries.all().size());
    List<Finding> named =
        AnimalChecks.findings(entries).stream()
            .filter(f -> f.kind() != FindingKind.FEW_ANIMALS)
            .toList();
    Set<Optional<String>> animals = new HashSet<>();
    named.forEach(f -> animals.add(f.animal()));
    // One row of the turtle set is known to be mistyped (41 for 51): two printed copies differ, and
    // its left-out distance has p = 6e-5 (facts I06b, I06d). Naming it is right.
    animals.remove(Optional.of("t34"));
    assertTrue(animals.size() < 0.02 * rows, () -> animals.size() + " rows named: " + named);
  }

  @ParameterizedTest(name = "{0} in a unit {2} times as long")
  @CsvSource({
    "voles, M1Left, 25.4",
    "voles, Length, 10",
    "voles, Rostrum, 25.4",
    "penguins, bill_length, 25.4",
    "penguins, flipper_length, 10",
    "penguins, bill_depth, 10",
  })
  void everyRowInAnotherUnitIsFoundAndNoOther(String set, String column, double unit) {
    ShelfEntries sound = set.equals("voles") ? OutsideEntries.voles() : OutsideEntries.penguins();
    MeasurementCode code = new MeasurementCode(column);
    List<BoneEntry> rows = new ArrayList<>();
    Set<String> slipped = new HashSet<>();
    for (BoneEntry row : sound.all()) {
      if (rows.size() % 10 == 3 && row.values().containsKey(code)) {
        slipped.add(row.animal());
        rows.add(with(row, code, row.value(code) / unit));
      } else {
        rows.add(row);
      }
    }
    Set<String> found = new HashSet<>();
    new UnitSlip()
        .check(new ShelfEntries(rows, sound.protocol(), sound.tree()))
        .forEach(f -> found.add(f.animal().orElseThrow() + " " + f.column().orElseThrow()));
    Set<String> expected = new HashSet<>();
    slipped.forEach(animal -> expected.add(animal + " " + column));
    assertTrue(slipped.size() >= sound.all().size() / 10 - 1);
    assertEquals(expected, found);
  }

  private static BoneEntry with(BoneEntry row, MeasurementCode code, double value) {
    Map<MeasurementCode, Double> values = new TreeMap<>(row.values());
    values.put(code, value);
    return new BoneEntry(
        row.row(),
        row.animal(),
        row.taxon(),
        row.element(),
        row.side(),
        row.portion(),
        row.flags(),
        row.ageClass(),
        row.remarks(),
        values);
  }
}
