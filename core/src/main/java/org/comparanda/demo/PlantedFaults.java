package org.comparanda.demo;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.measurement.Protocol;

/**
 * A copy of the simulated shelf with known faults, for trying the integrity list.
 *
 * @param csv the faulty table, in the form of {@code shelf.csv}
 * @param faults what was planted where, in the order of {@code faults.csv}
 */
public record PlantedFaults(String csv, List<Fault> faults) {
  public PlantedFaults {
    faults = List.copyOf(faults);
  }

  /**
   * One planted fault.
   *
   * @param animal catalogue number as it stands in the faulty table
   * @param bone element and side of the row, or "all" when every row of the animal has it
   * @param column header of the faulty cell
   * @param was text before
   * @param now text after
   */
  public record Fault(
      FaultKind kind, String animal, String bone, String column, String was, String now) {}

  /** The faults of {@code faults.csv} in the shipped shelf; no animal gets two. */
  public static PlantedFaults intoTheShelf(Protocol protocol, long seed) {
    FaultySheet sheet = new FaultySheet(DemoTable.rows("shelf.csv"), Draws.seeded(seed));
    FaultPlanter planter = new FaultPlanter(sheet, protocol);
    List<Fault> faults = new ArrayList<>();
    for (NamedCsvRecord row : DemoTable.rows("faults.csv")) {
      FaultKind kind = FaultKind.valueOf(row.getField("kind"));
      String by = row.getField("by");
      double size = by.isEmpty() ? 1 : Double.parseDouble(by);
      for (int i = 0; i < Integer.parseInt(row.getField("count")); i++) {
        faults.add(planter.plant(kind, size, i));
      }
    }
    return new PlantedFaults(sheet.csv(), faults);
  }
}
