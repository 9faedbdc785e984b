package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.Test;

/**
 * A bone given under a number that was merged away answers as under the number that was kept: its
 * own animal is out of everything. The shelf is the simulated one of the demo.
 */
class SecondNumberTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final ElementKey HUMERUS = new ElementKey("humerus");
  private static final AnimalId GONE = new AnimalId("gone");
  private static final AnimalId GONE_BEFORE = new AnimalId("gone before");
  private static final Shelf READ =
      TableReader.of(
              TABLES.protocol(),
              TABLES.taxa(),
              TableOptions.withDefaults().withUnitDoubt(TableOptions.UnitDoubt.TAKE_AS_IS))
          .shelf(Path.of("..", "demo-data", "shelf.csv"))
          .fold(
              TableRead::content,
              refused -> {
                throw new AssertionError(refused.toString());
              });
  private static final Animal KEPT =
      READ.animals().stream()
          .filter(a -> a.feedsFits() && a.bodyMassG().isPresent() && !a.origin().equals("captive"))
          .filter(a -> a.bones().stream().anyMatch(SecondNumberTest::whole))
          .findFirst()
          .orElseThrow();
  private static final Shelf SHELF =
      new Shelf(READ.animals(), Map.of(GONE_BEFORE, GONE, GONE, KEPT.id()));

  private static boolean whole(ShelfBone bone) {
    return bone.element().equals(HUMERUS) && bone.feedsFits() && bone.values().size() > 3;
  }

  private static BoneInHand bone(Optional<AnimalId> animal) {
    ShelfBone bone =
        KEPT.bones().stream().filter(SecondNumberTest::whole).findFirst().orElseThrow();
    return new BoneInHand(
        "x",
        animal,
        bone.element(),
        bone.side(),
        bone.portion(),
        BoneState.notRecorded(),
        bone.values());
  }

  @Test
  void aNumberMergedAwayLeavesTheKeptAnimalOutOfTheAnswer() {
    Comparison comparison =
        Comparison.of(SHELF, TABLES.protocol(), TABLES.taxa(), ComparisonRules.withDefaults());
    Suggestion kept = comparison.suggest(bone(Optional.of(KEPT.id())));
    Suggestion gone = comparison.suggest(bone(Optional.of(GONE_BEFORE)));
    assertEquals(kept.taxa(), gone.taxa());
    assertEquals(kept.nearest(), gone.nearest());
    assertEquals(Optional.of(KEPT.id()), gone.basis().leftOut());
    assertNotEquals(comparison.suggest(bone(Optional.empty())).taxa(), gone.taxa());
    assertTrue(
        gone.toString()
            .contains(
                "This bone belongs to gone before, a second number of "
                    + KEPT.id()
                    + " on the shelf; that animal is left out of everything here."),
        gone.toString());
  }

  @Test
  void aNumberMergedAwayLeavesTheKeptAnimalOutOfThePicture() {
    Comparison comparison =
        Comparison.of(SHELF, TABLES.protocol(), TABLES.taxa(), ComparisonRules.withDefaults());
    assertFalse(
        comparison.points(HUMERUS, bone(Optional.of(GONE))).stream()
            .anyMatch(point -> point.animal().equals(KEPT.id())));
  }

  @Test
  void aNumberMergedAwayLeavesTheKeptAnimalOutOfTheLine() {
    FittedLine line =
        SizeDesk.of(SHELF, TABLES.protocol())
            .line(SizeQuestion.of("body_mass", "humerus.Bd"))
            .value()
            .orElseThrow();
    assertEquals(
        line.estimate(bone(Optional.of(KEPT.id()))), line.estimate(bone(Optional.of(GONE))));
    assertNotEquals(line.estimate(bone(Optional.empty())), line.estimate(bone(Optional.of(GONE))));
  }
}
