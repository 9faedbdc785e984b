package org.comparanda.gui.bench;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.gui.app.DemoRoom;
import org.comparanda.gui.capture.MapMemory;
import org.comparanda.measurement.BoneId;
import org.comparanda.storage.Collection;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;

/** A bench on the simulated demo collection, with one more tray: a humerus not yet measured. */
record DemoBench(Collection collection, BenchPlace place, List<Runnable> waiting)
    implements AutoCloseable {
  static final Clock CLOCK = RoomPlace.CLOCK;
  private static final TrayId FRESH = new TrayId("fresh");

  static DemoBench in(Path folder, Executor work) {
    ReferenceTables tables = ReferenceTables.shipped();
    Collection collection = DemoRoom.open(folder, tables, CLOCK);
    collection
        .trays()
        .save(new Tray(FRESH, "Lot 1", "Fresh tray", BoneAge.RECENT, "", "", Tray.State.WAITING));
    collection
        .trays()
        .save(
            new TrayBone(
                new BoneId("N-1"),
                FRESH,
                Optional.empty(),
                new ElementKey("humerus"),
                Side.LEFT,
                Portion.DISTAL,
                BoneState.notRecorded(),
                TrayBone.Standing.OPEN,
                ""));
    BenchPlace place = RoomPlace.of(collection, work, new MapMemory(new HashMap<>()));
    List<Runnable> waiting = new ArrayList<>();
    return new DemoBench(collection, place.withIdle(waiting::add), waiting);
  }

  /** Does what may wait, as the program does when nobody types. */
  void idle() {
    List.copyOf(waiting).forEach(Runnable::run);
    waiting.clear();
  }

  /** Numbers of the bones whose slips were asked for. */
  List<String> printed() {
    return place.slips() instanceof SlipsInMemory slips ? slips.printed() : List.of();
  }

  /** Takes a bone of a tray in hand. */
  static void choose(BenchViewModel bench, String tray, String bone) {
    bench.choose(
        bench.trays().stream()
            .filter(t -> t.id().value().endsWith(tray))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no tray " + tray)));
    bench.choose(
        bench.bones().stream()
            .filter(b -> b.id().value().equals(bone))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no bone " + bone)));
  }

  @Override
  public void close() {
    collection.close();
  }
}
