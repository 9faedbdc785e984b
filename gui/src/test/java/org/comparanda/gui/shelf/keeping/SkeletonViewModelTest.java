package org.comparanda.gui.shelf.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Side;
import org.comparanda.capture.NotPossible;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.comparanda.storage.Collection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calcaneus of T-1 is measured in two passes a side: GL and GB. */
class SkeletonViewModelTest {
  private static final ElementKey CALCANEUS = new ElementKey("calcaneus");

  @TempDir Path folder;
  private Collection collection;
  private final Signature signature = new Signature();
  private SkeletonViewModel skeleton;

  @BeforeEach
  void open() {
    collection = KeepersRoom.collection(folder);
    skeleton =
        new SkeletonViewModel(
            KeepersRoom.of(collection), signature, Runnable::run, Runnable::run, () -> {});
    signature.whoProperty().set("p1");
    skeleton.open(new AnimalId("T-1"));
    skeleton.choose(element());
  }

  @AfterEach
  void close() {
    collection.close();
  }

  private Element element() {
    return KeepersRoom.TABLES.protocol().element(CALCANEUS).orElseThrow();
  }

  private void type(String... readings) {
    for (String reading : readings) {
      skeleton.fieldProperty().set(reading);
      skeleton.accept();
    }
  }

  private SkeletonRow row(int index) {
    return skeleton.rows().get(index);
  }

  @Test
  void theFirstPassIsHiddenDuringTheSecond() {
    type("54.8");
    assertEquals("54.8", row(0).left());
    type("19.2");
    assertEquals("", row(0).left());
    assertTrue(
        skeleton.promptProperty().get().startsWith("Bone down, caliper to zero. Then left, pass 2"),
        skeleton.promptProperty().get());
  }

  @Test
  void aFinishedLeftBoneGivesTheFieldToTheRightOneAndTheSidesAreCompared() {
    type("54.8", "19.2", "54.8", "19.2");
    assertEquals(Side.RIGHT, skeleton.sideProperty().get());
    type("54.6", "21.5", "54.6", "21.5");
    assertEquals(SkeletonRow.Standing.AGREE, row(0).standing());
    assertEquals(SkeletonRow.Standing.DIFFER, row(1).standing());
    assertEquals("10.7 %", row(1).difference()); // (21.5 − 19.2) / 21.5
  }

  @Test
  void valuesLandOnTheCardAndTheReadingsStayInTheLog() {
    type("54.8", "19.2", "54.6", "19.2");
    skeleton.store();
    assertEquals("3 changes are on the card.", skeleton.sentenceProperty().get());
    ShelfBone bone =
        collection.animals().shelf().animal(new AnimalId("T-1")).orElseThrow().bones().get(2);
    assertEquals(CALCANEUS, bone.element());
    assertEquals(
        Map.of(new MeasurementCode("GL"), 54.7, new MeasurementCode("GB"), 19.2), bone.values());
    assertEquals(4, collection.readings().of(new BoneId("T-1 calcaneus left")).size());
  }

  @Test
  void anUnfinishedBoneIsNotPutOnTheCard() {
    type("54.8");
    skeleton.store();
    assertEquals(
        "A bone has open fields: measure them or say that they are not possible. Nothing was put"
            + " on the card.",
        skeleton.sentenceProperty().get());
    skeleton.notPossible(NotPossible.BROKEN);
    assertEquals(
        1, skeleton.rows().stream().filter(r -> r.waiting() != SkeletonRow.Waiting.NONE).count());
  }

  @Test
  void nothingIsMeasuredWithoutAName() {
    signature.whoProperty().set("");
    type("54.8");
    assertEquals("Say who measures first.", skeleton.sentenceProperty().get());
    assertEquals(0, collection.readings().of(new BoneId("T-1 calcaneus left")).size());
  }
}
