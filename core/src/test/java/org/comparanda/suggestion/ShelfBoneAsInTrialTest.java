package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.outside.ProofRecord;
import org.comparanda.reference.Animal;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The simulated demo shelf has two sides of most animals, measurements missing here and there, and
 * taxa from three animals to forty: a bone of it put on the Bench with its animal's number answers
 * to the last digit as its row in the trial.
 */
class ShelfBoneAsInTrialTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final Shelf SHELF =
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
  private static final ElementKey HUMERUS = new ElementKey("humerus");

  /** Of the bones with the whole set so many are taken once; every bone with holes is. */
  private static final int STEP = ProofRecord.full() ? 1 : 8;

  @ParameterizedTest
  @EnumSource(Counting.class)
  void everyBoneAnswersAsItsRow(Counting counting) {
    Comparison comparison =
        Comparison.of(
            SHELF,
            TABLES.protocol(),
            TABLES.taxa(),
            ComparisonRules.withDefaults().withCounting(counting));
    List<TrialRow> rows = comparison.trial(HUMERUS).rows();
    List<Bone> bones =
        SHELF.animals().stream()
            .filter(Animal::feedsFits)
            .flatMap(a -> a.bones().stream().map(b -> new Bone(a, b)))
            .filter(b -> b.bone().element().equals(HUMERUS) && b.bone().feedsFits())
            .filter(b -> !b.bone().values().isEmpty())
            .toList();
    assertEquals(rows.size(), bones.size());
    for (int i = 0; i < rows.size(); i++) {
      TrialRow row = rows.get(i);
      if (i % STEP == 0 || row.measurements().size() < 4) {
        same(row, bones.get(i), comparison.suggest(bones.get(i).inHand()));
      }
    }
    assertTrue(rows.stream().map(TrialRow::measurements).distinct().count() > 3, "holes");
    assertEquals(6, rows.stream().map(TrialRow::taxon).distinct().count());
    assertTrue(
        rows.stream().map(TrialRow::side).collect(Collectors.toSet()).size() > 1, "both sides");
  }

  private record Bone(Animal animal, ShelfBone bone) {
    BoneInHand inHand() {
      return new BoneInHand(
          "x",
          Optional.of(animal.id()),
          bone.element(),
          bone.side(),
          bone.portion(),
          BoneState.notRecorded(),
          bone.values());
    }
  }

  private static void same(TrialRow row, Bone bone, Suggestion ours) {
    String where = row.toString();
    assertEquals(bone.animal().id(), row.animal(), where);
    assertEquals(bone.bone().side(), row.side(), where);
    assertEquals(row.measurements(), ours.measurements(), where);
    assertEquals(
        row.beforeGate(),
        ours.answer() == Answer.NEVER_TESTED ? Answer.FITS_ONE : ours.answer(),
        where);
    if (row.beforeGate() != Answer.SHELF_TOO_THIN) {
      TaxonFit first = ours.taxa().get(0);
      assertEquals(row.suggested(), Optional.of(first.taxon()), where);
      assertEquals(row.share().value(), Optional.of(first.share()), where);
      assertEquals(row.typicality().value(), Optional.of(first.typicality()), where);
    }
  }
}
