package org.comparanda.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.PersonId;
import org.comparanda.stock.Wanted;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.HouseNames;
import org.comparanda.taxon.HouseTaxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.junit.jupiter.api.Test;

/** Invented arrivals; the order follows from the rule by hand. */
class PileOrderTest {
  private static final List<Wanted.Entry> WANTED =
      List.of(
          wanted("Ovis aries", "humerus", 0.01),
          wanted("Ovis aries", "femur", 0.04),
          wanted("Capra hircus", "femur", 0.03));

  @Test
  void whatResearchWaitsForLiesOnTopThenTheLargestGainThenTheOldest() {
    List<PileEntry> pile =
        PileOrder.of(
            List.of(
                arrival("1", "Capra hircus", "2026-01-05", Arrival.Stage.FROZEN),
                arrival("2", "Ovis aries", "2026-03-01", Arrival.Stage.MACERATING),
                arrival("3", "Ovis aries", "2026-02-01", Arrival.Stage.CLEANED),
                arrival("4", "Meles meles", "2025-01-01", Arrival.Stage.FROZEN),
                arrival("5", "Ovis aries", "2024-01-01", Arrival.Stage.ON_THE_SHELF),
                arrival("6", "Meles meles", "2026-05-01", Arrival.Stage.TO_MEASURE)),
            List.of(new Interest("6", new PersonId("anna"), "badger teeth", Instant.EPOCH)),
            WANTED,
            TaxonTree.empty());
    assertEquals(
        List.of("6", "3", "2", "1", "4"), pile.stream().map(e -> e.arrival().number()).toList());
  }

  @Test
  void whyItLiesThereIsSaid() {
    List<PileEntry> pile =
        PileOrder.of(
            List.of(arrival("3", "Ovis aries", "2026-02-01", Arrival.Stage.CLEANED)),
            List.of(new Interest("3", new PersonId("anna"), "wool", Instant.EPOCH)),
            WANTED,
            TaxonTree.empty());
    assertEquals(
        "Asked for by anna: wool. Five more would raise its kind's share by 4.1 % for the femur: because.",
        pile.get(0).why());
  }

  @Test
  void anArrivalUnderAnOldNameHasTheGainOfTheTaxonItIsNow() {
    TaxonTree renamed =
        HouseNames.of(
                List.of(
                    HouseTaxon.blank(new TaxonName("Ovis antiqua"), "invented")
                        .synonymOf(new TaxonName("Ovis aries"))))
            .on(ReferenceTables.shipped().taxa())
            .value()
            .orElseThrow();
    List<PileEntry> pile =
        PileOrder.of(
            List.of(arrival("3", "Ovis antiqua", "2026-02-01", Arrival.Stage.CLEANED)),
            List.of(),
            WANTED,
            renamed);
    assertEquals(
        "Five more would raise its kind's share by 4.1 % for the femur: because.",
        pile.get(0).why());
  }

  private static Wanted.Entry wanted(String taxon, String element, double gain) {
    return new Wanted.Entry(new TaxonName(taxon), new ElementKey(element), gain, "because.");
  }

  private static Arrival arrival(String number, String taxon, String day, Arrival.Stage stage) {
    return new Arrival(
        number,
        new TaxonName(taxon),
        "carcass",
        LocalDate.parse(day),
        "invented",
        stage,
        "",
        "",
        "");
  }
}
