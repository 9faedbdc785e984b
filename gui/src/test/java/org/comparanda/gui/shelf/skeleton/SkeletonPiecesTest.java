package org.comparanda.gui.shelf.skeleton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.gui.shelf.keeping.KeepersRoom;
import org.comparanda.gui.shelf.skeleton.SkeletonViewModel.Hands;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;
import org.junit.jupiter.api.Test;

/** The left femur of T-1 is there in two pieces. */
class SkeletonPiecesTest extends MeasuredSkeleton {
  private static final ElementKey FEMUR = new ElementKey("femur");
  private static final BoneId UPPER = new BoneId("T-1 femur left");
  private static final BoneId LOWER = new BoneId("T-1 femur left 2");

  private void femur() {
    skeleton.choose(KeepersRoom.TABLES.protocol().element(FEMUR).orElseThrow());
    skeleton.choose(Hands.LEFT);
  }

  private void part(Portion part) {
    skeleton.inHand().state().portionProperty().set(part);
  }

  /** Answers every open field of the bone in hand: its reading, or not possible. */
  private void upperPiece() {
    femur();
    part(Portion.PROXIMAL);
    keys("\n");
    keys("44.8\n20.7\n16.9\n44.8\n20.7\n16.9\n"); // Bp, DC, SD twice
  }

  @Test
  void twoPiecesOfOneSideEachHaveTheirPartTheirReadingsAndTheirNumber() {
    upperPiece();
    skeleton.anotherPiece();
    assertEquals(Portion.DISTAL, skeleton.inHand().state().portionProperty().get());
    assertEquals(List.of(Portion.PROXIMAL, Portion.DISTAL), skeleton.parts());
    assertTrue(
        skeleton.inHand().state().questionsProperty().get().isPresent(), "its state is asked");
    keys("\n16.6\n39.1\n16.6\n39.1\n"); // SD, Bd twice
    assertEquals(List.of("44.8", "20.7", "16.9", "44.8", "20.7", "16.9"), taken(UPPER));
    assertEquals(List.of("16.6", "39.1", "16.6", "39.1"), taken(LOWER));
    skeleton.store();
    assertEquals(
        "7 changes are on the card.", skeleton.sentenceProperty().get()); // two bones, five values
    assertEquals(
        Map.of(
            Portion.PROXIMAL,
            Map.of(code("Bp"), 44.8, code("DC"), 20.7, code("SD"), 16.9),
            Portion.DISTAL,
            Map.of(code("SD"), 16.6, code("Bd"), 39.1)),
        collection.animals().shelf().animal(new AnimalId("T-1")).orElseThrow().bones().stream()
            .filter(b -> b.element().equals(FEMUR))
            .collect(Collectors.toMap(ShelfBone::portion, ShelfBone::values)));
  }

  @Test
  void theFirstPieceComesBackWithItsReadings() {
    upperPiece();
    skeleton.anotherPiece();
    keys("\n16.6\n");
    skeleton.choose(Portion.PROXIMAL);
    assertEquals(Portion.PROXIMAL, skeleton.inHand().state().portionProperty().get());
    assertEquals(44.8, skeleton.inHand().readings().values().get(code("Bp")));
    skeleton.choose(Portion.DISTAL);
    assertEquals(Map.of(code("SD"), 16.6), skeleton.inHand().readings().values());
  }

  @Test
  void aWholeBoneHasNoOtherPieceAndAPartIsTakenOnce() {
    femur();
    skeleton.anotherPiece();
    assertTrue(message().startsWith("This bone is whole."), message());
    part(Portion.PROXIMAL);
    keys("\n44.8\n");
    skeleton.anotherPiece();
    part(Portion.PROXIMAL);
    assertEquals(
        "There is a piece of that part already. Choose that piece, or another part.", message());
    part(Portion.SHAFT);
    keys("\n");
    assertEquals(List.of(Portion.PROXIMAL, Portion.SHAFT), skeleton.parts());
  }

  @Test
  void halfTypedTextOfASecondPieceComesBackAfterARestart() {
    upperPiece();
    skeleton.anotherPiece();
    keys("\n16.6\n39.");
    start();
    assertEquals(Portion.DISTAL, skeleton.inHand().state().portionProperty().get());
    assertEquals("39.", skeleton.inHand().readings().fieldProperty().get().text());
  }

  @Test
  void theKeyForPiecesTakesAnotherOne() {
    upperPiece();
    keys("04\n");
    assertEquals(Portion.DISTAL, skeleton.inHand().state().portionProperty().get());
  }

  private static MeasurementCode code(String code) {
    return new MeasurementCode(code);
  }
}
