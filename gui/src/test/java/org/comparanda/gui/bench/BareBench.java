package org.comparanda.gui.bench;

import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.capture.MapMemory;
import org.comparanda.gui.capture.Memory;
import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import org.comparanda.tray.NumberRule;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;

/** A bench with an empty shelf and one tray of three invented bones, numbered by rule. */
record BareBench(Collection collection, BenchPlace place) implements AutoCloseable {
  static final Clock CLOCK = RoomPlace.CLOCK;
  static final Tray TRAY =
      new Tray(new TrayId("t"), "L1", "Tray", BoneAge.RECENT, "", "", Tray.State.WAITING);
  static final Tray EMPTY =
      new Tray(new TrayId("e"), "L1", "Empty", BoneAge.RECENT, "", "", Tray.State.WAITING);

  static BareBench in(Path folder) {
    return in(folder, new MapMemory(new HashMap<>()));
  }

  static BareBench in(Path folder, Memory memory) {
    Collection collection =
        Collection.openOrCreate(folder.resolve("bare" + Collection.ENDING), CLOCK);
    if (collection.trays().all().isEmpty()) {
      fill(collection);
    }
    return new BareBench(collection, RoomPlace.of(collection, Runnable::run, memory));
  }

  private static void fill(Collection collection) {
    collection.trays().save(TRAY);
    collection.trays().save(EMPTY);
    collection.numbering().setRule(TRAY.id(), new NumberRule("H-{year}-{number:4}"));
    collection.trays().save(bone("N-1", "humerus", Side.LEFT, Portion.DISTAL));
    collection.trays().save(bone("N-2", "humerus", Side.RIGHT, Portion.DISTAL));
    collection.trays().save(bone("N-3", "femur", Side.NOT_KNOWN, Portion.WHOLE));
  }

  private static TrayBone bone(String id, String element, Side side, Portion portion) {
    return TrayBone.fresh(new BoneId(id), TRAY.id(), new ElementKey(element), side, portion);
  }

  @Override
  public void close() {
    collection.close();
  }
}
