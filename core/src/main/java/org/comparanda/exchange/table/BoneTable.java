package org.comparanda.exchange.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.comparanda.reference.BoneInHand;

/**
 * The bones in hand of a table that was read once and found sound. They are read again each time,
 * never all kept, so that a table of any length can be gone through.
 */
public final class BoneTable {
  private final TableReading reading;

  BoneTable(TableReading reading) {
    this.reading = reading;
  }

  /**
   * Hands over each bone in the order of the table.
   *
   * <p>Errors: {@link IllegalStateException} if the file was changed since it was checked.
   */
  public void forEach(Consumer<BoneInHand> taker) {
    reading.eachBone(taker);
  }

  /** All bones at once, for tables of ordinary length. */
  public List<BoneInHand> toList() {
    List<BoneInHand> bones = new ArrayList<>();
    forEach(bones::add);
    return bones;
  }
}
