package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.outside.ProofRecord;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Search;
import org.comparanda.tray.SpokenNames;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words are found among very many readings of invented animals; the times are recorded. */
class LargeSearchTest {
  private static final int ANIMALS = ProofRecord.full() ? 17_000 : 300;
  private static final int MOST = 200;
  private static final List<String> CODES = List.of("GL", "GLC", "SD", "Bd", "BT", "HTC");

  @TempDir Path folder;

  @Test
  void wordsAreFoundAmongVeryManyReadings() throws Exception {
    Path file = folder.resolve("large.comparanda");
    Clock clock = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
    ReferenceTables tables = ReferenceTables.shipped();
    try (Collection collection = Collection.create(file, clock)) {
      collection
          .animals()
          .add(
              IntStream.range(0, ANIMALS).mapToObj(LargeSearchTest::animal).iterator(),
              "",
              n -> true);
      Search search =
          collection.search(new SpokenNames(tables.protocol().elements(), tables.taxa()));
      // by hand: GL of animal 7 is 100.7, and each hundredth animal repeats it
      assertEquals("B-7", search.find("\"B-7\" GL 100.7", MOST).get(0).key());
      assertEquals(List.of(), search.find("femur", MOST));
      Map<String, Integer> hits = new LinkedHashMap<>();
      List<Long> milliseconds = new ArrayList<>();
      for (String words :
          List.of(
              "h", "humerus", "Oberarm", "sheep GL 100", "\"Bd 103.4\"", "100.7 left B-7", "1")) {
        long begun = System.nanoTime();
        hits.put(words, search.find(words, MOST).size());
        milliseconds.add(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun));
      }
      assertEquals(MOST, hits.get("humerus"));
      assertEquals(MOST, hits.get("Oberarm"));
      ProofRecord.held(
          "large-search",
          "Words are found among very many readings",
          ANIMALS * CODES.size() + " readings",
          0,
          hits + "; ms on the clock " + milliseconds);
    }
  }

  private static Animal animal(int number) {
    Map<MeasurementCode, Double> values = new TreeMap<>();
    for (int i = 0; i < CODES.size(); i++) {
      values.put(new MeasurementCode(CODES.get(i)), (1000 + number % 100 + 10 * i) / 10.0);
    }
    return Animal.blank(new AnimalId("B-" + number))
        .withTaxon(Optional.of(new TaxonName("Ovis aries")))
        .withBones(
            List.of(
                new ShelfBone(
                    new ElementKey("humerus"), Side.LEFT, Portion.WHOLE, Set.of(), values)));
  }
}
