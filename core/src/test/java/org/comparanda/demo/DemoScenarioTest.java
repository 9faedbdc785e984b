package org.comparanda.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PartRule;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped demo is the scenario that it claims to be. */
class DemoScenarioTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final List<NamedCsvRecord> SHELF = read("shelf.csv");
  private static final List<NamedCsvRecord> TRUTH = read("truth.csv");

  @Test
  void theShelfHolds168AnimalsOf12Taxa() {
    Map<String, Set<String>> animals = new TreeMap<>();
    for (NamedCsvRecord row : SHELF) {
      animals
          .computeIfAbsent(row.getField("taxon"), t -> new HashSet<>())
          .add(row.getField("animal"));
    }
    List<Integer> counts = animals.values().stream().map(Set::size).sorted().toList();
    assertEquals(12, counts.size());
    assertEquals(168, counts.stream().mapToInt(Integer::intValue).sum());
    assertEquals(2, counts.get(0));
    assertEquals(40, counts.get(11));
    assertEquals(3, counts.stream().filter(n -> n >= 30).count());
  }

  @Test
  void everyNameIsInTheReferenceTables() {
    for (NamedCsvRecord row : SHELF) {
      assertTrue(TABLES.taxa().taxon(new TaxonName(row.getField("taxon"))).isPresent());
      assertTrue(TABLES.protocol().element(element(row)).isPresent());
      for (String code : codes(row)) {
        assertTrue(
            TABLES.protocol().measurement(element(row), new MeasurementCode(code)).isPresent(),
            row.getField("element") + "." + code);
      }
    }
  }

  @Test
  void aboutSixInAHundredReadingsAreMissing() {
    Map<String, Integer> possible = new HashMap<>();
    SHELF.forEach(r -> possible.merge(r.getField("element"), 1, Integer::sum));
    int wanted =
        6 * possible.get("humerus")
            + 6 * possible.get("femur")
            + 2 * possible.get("calcaneus")
            + 5 * possible.get("mandible")
            + 3 * possible.get("carapace");
    int there = SHELF.stream().mapToInt(r -> codes(r).size()).sum();
    double missing = 1 - (double) there / wanted;
    assertTrue(missing > 0.05 && missing < 0.07, "missing " + missing);
  }

  @ParameterizedTest
  @ValueSource(strings = {"humerus", "femur", "calcaneus", "mandible"})
  void atLeastTenAnimalsHaveBothSides(String element) {
    Map<String, Integer> sides = new HashMap<>();
    SHELF.stream()
        .filter(r -> r.getField("element").equals(element))
        .forEach(r -> sides.merge(r.getField("animal"), 1, Integer::sum));
    assertTrue(sides.values().stream().filter(n -> n == 2).count() >= 10);
  }

  @Test
  void everyReadingIsPlausibleAndNoPartIsLongerThanItsWhole() {
    for (NamedCsvRecord row : SHELF) {
      for (String code : codes(row)) {
        var range =
            TABLES.protocol().measurement(element(row), new MeasurementCode(code)).orElseThrow();
        assertTrue(range.plausible().orElseThrow().lowMm() < value(row, code));
        assertTrue(range.plausible().orElseThrow().highMm() > value(row, code));
      }
      for (PartRule rule : TABLES.protocol().partRules(element(row))) {
        if (has(row, rule.part().value()) && has(row, rule.whole().value())) {
          assertTrue(
              value(row, rule.part().value()) <= value(row, rule.whole().value()),
              row.getField("animal") + " " + rule);
        }
      }
    }
  }

  @Test
  void theStrangerIsNotOnTheShelfYetEachReadingIsInsideTheRangeOfAKindThatIs() {
    assertEquals("NOTHING_FITS", truth("K-206").getField("answer"));
    String stranger = truth("K-206").getField("taxon");
    assertTrue(SHELF.stream().noneMatch(r -> r.getField("taxon").equals(stranger)));
    NamedCsvRecord bone = bone("hard", "K-206");
    assertEquals(6, codes(bone).size());
    Set<String> kinds = new HashSet<>();
    SHELF.forEach(r -> kinds.add(r.getField("taxon")));
    for (String code : codes(bone)) {
      assertTrue(
          kinds.stream().anyMatch(kind -> inside(bone, code, kind)), code + " is in no range");
    }
  }

  @Test
  void theCalfBoneIsUnfusedAndInsideTheRangeOfAdultSheep() {
    NamedCsvRecord bone = bone("hard", "K-205");
    assertEquals("unfused", bone.getField("flags"));
    assertEquals("Bos taurus", truth("K-205").getField("taxon"));
    for (String code : codes(bone)) {
      assertTrue(inside(bone, code, "Ovis aries"), code);
    }
  }

  @Test
  void everyBoneOnATrayHasOneTruthAndTheOtherWayRound() {
    List<String> onTrays = new ArrayList<>();
    for (String tray : DemoTray.TRAYS) {
      read("tray-" + tray + ".csv").forEach(r -> onTrays.add(tray + " " + r.getField("bone")));
    }
    assertEquals(
        onTrays, TRUTH.stream().map(r -> r.getField("tray") + " " + r.getField("bone")).toList());
    assertTrue(onTrays.size() == new HashSet<>(onTrays).size());
  }

  @Test
  void everyRowSaysThatItIsSimulated() {
    assertTrue(SHELF.stream().allMatch(r -> r.getField("remarks").startsWith("simulated")));
    for (String tray : DemoTray.TRAYS) {
      assertTrue(
          read("tray-" + tray + ".csv").stream()
              .allMatch(r -> r.getField("remarks").startsWith("simulated")));
    }
  }

  @Test
  void theThreeMarkedBonesOfThePlanAreOnTheShelf() {
    assertEquals(3, SHELF.stream().filter(r -> !r.getField("flags").isEmpty()).count());
  }

  // The lesson: animals of one body length, the gharial with the much longer jaw.
  @Test
  void theSlenderSnoutHasALongerJawForItsBodyThanAnyBroadOne() {
    double shortestBroad = 1e9;
    double longestSlender = 0;
    for (NamedCsvRecord row : SHELF) {
      if (has(row, "ML") && !row.getField("body_length [mm]").isEmpty()) {
        double ratio = Double.parseDouble(row.getField("body_length [mm]")) / value(row, "ML");
        if (row.getField("taxon").equals("Gavialis gangeticus")) {
          longestSlender = Math.max(longestSlender, ratio);
        } else {
          shortestBroad = Math.min(shortestBroad, ratio);
        }
      }
    }
    assertTrue(longestSlender < 0.95 * shortestBroad, longestSlender + " " + shortestBroad);
  }

  private static boolean inside(NamedCsvRecord bone, String code, String taxon) {
    double mm = value(bone, code);
    List<Double> seen =
        SHELF.stream()
            .filter(r -> r.getField("taxon").equals(taxon))
            .filter(r -> r.getField("element").equals(bone.getField("element")))
            .filter(r -> has(r, code))
            .map(r -> value(r, code))
            .toList();
    return seen.stream().anyMatch(v -> v <= mm) && seen.stream().anyMatch(v -> v >= mm);
  }

  private static ElementKey element(NamedCsvRecord row) {
    return new ElementKey(row.getField("element"));
  }

  private static List<String> codes(NamedCsvRecord row) {
    return DemoShelf.MEASUREMENTS.stream().filter(code -> has(row, code)).toList();
  }

  private static boolean has(NamedCsvRecord row, String code) {
    return !row.getField(code + " [mm]").isEmpty();
  }

  private static double value(NamedCsvRecord row, String code) {
    return Double.parseDouble(row.getField(code + " [mm]"));
  }

  private static NamedCsvRecord truth(String bone) {
    return TRUTH.stream().filter(r -> r.getField("bone").equals(bone)).findFirst().orElseThrow();
  }

  private static NamedCsvRecord bone(String tray, String bone) {
    return read("tray-" + tray + ".csv").stream()
        .filter(r -> r.getField("bone").equals(bone))
        .findFirst()
        .orElseThrow();
  }

  private static List<NamedCsvRecord> read(String file) {
    try (CsvReader<NamedCsvRecord> csv =
        CsvReader.builder().ofNamedCsvRecord(Path.of("../demo-data").resolve(file))) {
      return csv.stream().toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
