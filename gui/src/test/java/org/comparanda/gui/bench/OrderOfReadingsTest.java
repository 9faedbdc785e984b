package org.comparanda.gui.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.capture.Draft;
import org.comparanda.capture.NamedKey;
import org.comparanda.capture.Place;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.suggestion.DrawerEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Picture and drawer depend on which readings were taken, never on their order. */
class OrderOfReadingsTest {
  private static final Map<String, String> READINGS =
      Map.of("SD", "15.8", "Bd", "32.7", "BT", "30.2", "HTC", "14.9");

  private record State(FallingPicture picture, List<DrawerEntry> drawer) {}

  @Test
  void theFinalStateIsTheSameInEveryOrder(@TempDir Path folder) {
    try (DemoBench room = DemoBench.in(folder, Runnable::run)) {
      Set<State> ends = new HashSet<>();
      Set<FallingPicture> ways = new HashSet<>();
      List<String> order = new ArrayList<>(READINGS.keySet());
      Collections.sort(order);
      Random random = new Random(6);
      for (int round = 0; round < 8; round++) {
        BenchViewModel bench = new BenchViewModel(room.place());
        DemoBench.choose(bench, "fresh", "N-1");
        take(bench, order.get(0));
        ways.add(bench.pictureProperty().get());
        order.stream().skip(1).forEach(code -> take(bench, code));
        ends.add(
            new State(
                bench.pictureProperty().get(),
                bench.findingProperty().get().orElseThrow().suggestion().drawer()));
        order.forEach(code -> bench.readings().typed('/'));
        Collections.shuffle(order, random);
      }
      assertTrue(ways.size() > 1, "the way differs");
      assertEquals(1, ends.size());
    }
  }

  private static void take(BenchViewModel bench, String code) {
    Place place = new Place(new MeasurementCode(code), 1);
    bench.readings().resume(new Draft(new BoneId("N-1"), new ElementKey("humerus"), place, ""));
    READINGS.get(code).chars().forEach(c -> bench.readings().typed((char) c));
    bench.readings().pressed(NamedKey.ENTER);
  }
}
