package org.comparanda.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

class StockTest {
  private static final TaxonName SHEEP = new TaxonName("Ovis aries");
  private static final TaxonName GOAT = new TaxonName("Capra hircus");
  private static final ElementKey HUMERUS = new ElementKey("humerus");
  private static final ElementKey FEMUR = new ElementKey("femur");

  @Test
  void bothSidesOfOneAnimalCountOnceAndACastNotAtAll() {
    Shelf shelf =
        new Shelf(
            List.of(
                animal(
                    "HB-1",
                    SHEEP,
                    bone(HUMERUS, Side.LEFT, Set.of()),
                    bone(HUMERUS, Side.RIGHT, Set.of())),
                animal(
                    "HB-2",
                    SHEEP,
                    bone(HUMERUS, Side.LEFT, Set.of(Flag.CAST)),
                    bone(FEMUR, Side.LEFT, Set.of())),
                animal("HB-3", GOAT, bone(FEMUR, Side.LEFT, Set.of()))));
    assertEquals(
        List.of(
            new Stock.Cell(GOAT, FEMUR, 1),
            new Stock.Cell(GOAT, HUMERUS, 0),
            new Stock.Cell(SHEEP, FEMUR, 1),
            new Stock.Cell(SHEEP, HUMERUS, 1)),
        Stock.of(shelf).cells());
  }

  @Test
  void aShelfOfOneTaxonWantsNothing() {
    Shelf shelf =
        new Shelf(
            List.of(
                animal("HB-1", SHEEP, bone(HUMERUS, Side.LEFT, Set.of())),
                animal("HB-2", SHEEP, bone(HUMERUS, Side.LEFT, Set.of()))));
    assertEquals(List.of(), Wanted.withDefaults().of(shelf));
    assertEquals(List.of(), Wanted.withDefaults().of(new Shelf(List.of())));
  }

  // e^0.0198 = 1.019997, e^0.0005 = 1.000500 (by hand, from memory of the series).
  @Test
  void aGainIsSaidAsGrowthOfTheShareThatBonesGiveTheirOwnKind() {
    assertEquals("2.0 %", new Wanted.Entry(SHEEP, FEMUR, 0.0198, "").growthText());
    assertEquals("0.05 %", new Wanted.Entry(SHEEP, FEMUR, 0.0005, "").growthText());
    assertEquals("< 0.01 %", new Wanted.Entry(SHEEP, FEMUR, -0.0001, "").growthText());
  }

  @Test
  void theSameShelfWantsTheSame() {
    Shelf shelf = SimulatedShelf.of(5);
    assertEquals(Wanted.withDefaults().of(shelf), Wanted.withDefaults().of(shelf));
  }

  private static Animal animal(String id, TaxonName taxon, ShelfBone... bones) {
    return new Animal(
        new AnimalId(id),
        Optional.of(taxon),
        Source.OWN_DRAWER,
        Optional.of("A 1"),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "",
        List.of(bones));
  }

  private static ShelfBone bone(ElementKey element, Side side, Set<Flag> flags) {
    return new ShelfBone(
        element, side, Portion.WHOLE, flags, Map.of(new MeasurementCode("GL"), 150.0));
  }
}
