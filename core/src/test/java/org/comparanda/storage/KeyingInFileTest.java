package org.comparanda.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.tray.Batch;
import org.comparanda.tray.NumberRule;
import org.comparanda.tray.Pair;
import org.comparanda.tray.Refit;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Numbers, pieces, bones found together and what a bench is about survive a restart. Invented. */
class KeyingInFileTest {
  private static final Clock YEAR_2026 = at("2026-11-25T10:00:00Z");
  private static final Tray TRAY =
      new Tray(new TrayId("t1"), "L1", "Tray", BoneAge.RECENT, "", "", Tray.State.WAITING);

  @TempDir private Path folder;
  private Collection collection;

  @BeforeEach
  void open() {
    collection = Collection.create(folder.resolve("c.comparanda"), YEAR_2026);
    collection.trays().save(TRAY);
    collection.numbering().setRule(TRAY.id(), new NumberRule("H-{year}-{number:4}"));
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private static Clock at(String instant) {
    return Clock.fixed(Instant.parse(instant), ZoneOffset.UTC);
  }

  private void reopen(Clock clock) {
    collection.close();
    collection = Collection.open(folder.resolve("c.comparanda"), clock);
  }

  private static TrayBone bone(BoneId id) {
    return new TrayBone(
        id,
        TRAY.id(),
        Optional.empty(),
        new ElementKey("humerus"),
        Side.LEFT,
        Portion.WHOLE,
        BoneState.notRecorded(),
        TrayBone.Standing.OPEN,
        "");
  }

  private String put() {
    return collection.numbering().put(TRAY, KeyingInFileTest::bone).id().value();
  }

  @Test
  void theNextNumberIsShownBeforeItIsUsedAndThenGiven() {
    assertEquals(new BoneId("H-2026-0001"), collection.numbering().next(TRAY));
    assertEquals(new BoneId("H-2026-0001"), collection.numbering().next(TRAY));
    assertEquals("H-2026-0001", put());
    assertEquals(new BoneId("H-2026-0002"), collection.numbering().next(TRAY));
    assertTrue(collection.trays().bone(new BoneId("H-2026-0001")).isPresent());
  }

  @Test
  void aNumberGivenByHandIsPassedOver() {
    collection.trays().save(bone(new BoneId("H-2026-0041")));
    assertEquals("H-2026-0042", put());
  }

  @Test
  void noNumberComesAgainAfterARestartOrUnderTheRuleTakenUpAnew() {
    assertEquals("H-2026-0001", put());
    collection.numbering().setRule(TRAY.id(), new NumberRule("{lot}.{number}"));
    assertEquals("L1.1", put());
    reopen(YEAR_2026);
    collection.numbering().setRule(TRAY.id(), new NumberRule("H-{year}-{number:2}"));
    assertEquals("H-2026-02", put());
  }

  @Test
  void aNewYearBeginsItsOwnSeries() {
    put();
    reopen(at("2027-01-02T10:00:00Z"));
    assertEquals("H-2027-0001", put());
  }

  @Test
  void aBoneThatCantBePutTakesNoNumber() {
    assertThrows(
        IllegalStateException.class,
        () ->
            collection
                .numbering()
                .put(
                    TRAY,
                    id -> {
                      throw new IllegalStateException("invented fault");
                    }));
    assertEquals("H-2026-0001", put());
  }

  @Test
  void batchAndPairOfABenchComeBack() {
    Batch batch = new Batch(TRAY.id(), new ElementKey("femur"), Side.RIGHT, Portion.DISTAL, 12);
    Pair pair = new Pair(new BoneId(put()), new BoneId(put()));
    collection.keying().save("bench 1", batch.withLeft(20));
    collection.keying().save("bench 1", batch);
    collection.keying().save("bench 1", pair);
    reopen(YEAR_2026);
    assertEquals(Optional.of(batch), collection.keying().batch("bench 1"));
    assertEquals(Optional.of(pair), collection.keying().pair("bench 1"));
    assertEquals(Optional.empty(), collection.keying().batch("bench 2"));
    collection.keying().endBatch("bench 1");
    collection.keying().endPair("bench 1");
    assertEquals(Optional.empty(), collection.keying().batch("bench 1"));
    assertEquals(Optional.empty(), collection.keying().pair("bench 1"));
  }

  @Test
  void piecesComeBackWithWhatCrossesTheBreak() {
    Refit refit =
        new Refit(
            new BoneId(put()),
            List.of(Portion.PROXIMAL, Portion.DISTAL),
            Set.of(new MeasurementCode("SD"), new MeasurementCode("GL")));
    collection.refits().save(refit);
    reopen(YEAR_2026);
    assertEquals(Optional.of(refit), collection.refits().of(refit.bone()));
    assertEquals(List.of(refit), collection.refits().all());
  }

  @Test
  void bonesFoundTogetherAreOneAssociationHoweverTheyWereJoined() {
    List<BoneId> bones =
        List.of(new BoneId(put()), new BoneId(put()), new BoneId(put()), new BoneId(put()));
    collection.associations().join(bones.get(0), bones.get(1));
    collection.associations().join(bones.get(2), bones.get(3));
    collection.associations().join(bones.get(3), bones.get(0));
    reopen(YEAR_2026);
    assertEquals(bones, collection.associations().of(bones.get(1)).orElseThrow().bones());
    assertEquals(1, collection.associations().all().size());
  }

  @Test
  void aBoneLeftAloneIsInNoAssociation() {
    BoneId one = new BoneId(put());
    BoneId other = new BoneId(put());
    collection.associations().join(one, other);
    collection.associations().part(one);
    assertEquals(Optional.empty(), collection.associations().of(other));
    assertEquals(List.of(), collection.associations().all());
  }
}
