package org.comparanda.exchange.table;

import java.util.List;
import java.util.Map;
import org.comparanda.tally.PerSkeleton;
import org.comparanda.tally.ProtocolNumbers;
import org.comparanda.tally.TallyRow;

/**
 * A table of counted bones.
 *
 * @param rows as counted, in the order of the file
 * @param perSkeleton the numbers per skeleton that the table itself gives
 * @param facts how it was read
 */
public record CountTable(
    List<TallyRow> rows,
    Map<ProtocolNumbers.Bone, PerSkeleton.Occurrence> perSkeleton,
    TableFacts facts) {
  public CountTable {
    rows = List.copyOf(rows);
    perSkeleton = Map.copyOf(perSkeleton);
  }
}
