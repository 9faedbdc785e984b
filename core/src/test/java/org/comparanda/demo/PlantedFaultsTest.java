package org.comparanda.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.comparanda.demo.PlantedFaults.Fault;
import org.comparanda.measurement.Protocol;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

class PlantedFaultsTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final Protocol PROTOCOL = TABLES.protocol();
  private static final PlantedFaults PLANTED = PlantedFaults.intoTheShelf(PROTOCOL, 7);
  private static final List<NamedCsvRecord> SOUND = DemoTable.rows("shelf.csv");
  private static final List<NamedCsvRecord> FAULTY = DemoTable.parse(PLANTED.csv());

  @Test
  void fiveFaultsOfEachOfTwelveKinds() {
    Map<FaultKind, Integer> counts = new EnumMap<>(FaultKind.class);
    PLANTED.faults().forEach(f -> counts.merge(f.kind(), 1, Integer::sum));
    assertEquals(12, counts.size());
    assertTrue(counts.values().stream().allMatch(n -> n == 5), counts.toString());
  }

  @Test
  void everyFaultChangesItsCell() {
    for (Fault fault : PLANTED.faults()) {
      assertNotEquals(fault.was(), fault.now(), fault.toString());
      String animal = fault.kind() == FaultKind.NUMBER_TWICE ? fault.now() : fault.animal();
      assertTrue(
          FAULTY.stream()
              .filter(r -> r.getField("animal").equals(animal))
              .anyMatch(r -> r.getField(fault.column()).equals(fault.now())),
          fault.toString());
    }
  }

  @Test
  void onlyRowsOfSpoiltAnimalsDifferFromTheShelf() {
    Set<String> spoilt = new HashSet<>();
    PLANTED
        .faults()
        .forEach(f -> spoilt.add(f.kind() == FaultKind.NUMBER_TWICE ? f.was() : f.animal()));
    assertEquals(60, spoilt.size());
    for (int i = 0; i < SOUND.size(); i++) {
      NamedCsvRecord sound = SOUND.get(i);
      if (!spoilt.contains(sound.getField("animal"))) {
        assertEquals(
            sound.getFields(), FAULTY.get(i).getFields().subList(0, sound.getFieldCount()));
      }
    }
  }

  @Test
  void misspeltTaxaAreUnknownAndOneLetterOff() {
    for (Fault fault : of(FaultKind.TAXON_MISSPELT)) {
      assertTrue(TABLES.taxa().taxon(new TaxonName(fault.now())).isEmpty());
      assertEquals(fault.was().length(), fault.now().length());
      int different = 0;
      for (int i = 0; i < fault.was().length(); i++) {
        different += fault.was().charAt(i) == fault.now().charAt(i) ? 0 : 1;
      }
      assertEquals(1, different, fault.toString());
    }
  }

  @Test
  void theSameSeedPlantsTheSame() {
    assertEquals(PLANTED, PlantedFaults.intoTheShelf(PROTOCOL, 7));
    assertNotEquals(PLANTED, PlantedFaults.intoTheShelf(PROTOCOL, 8));
  }

  private static List<Fault> of(FaultKind kind) {
    return PLANTED.faults().stream().filter(f -> f.kind() == kind).toList();
  }
}
