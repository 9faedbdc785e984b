package org.comparanda.secondlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.outside.OutsideTable;
import org.comparanda.statistics.NotEstimable;
import org.comparanda.statistics.agreement.Kappa;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Call;
import org.comparanda.tray.Qualifier;
import org.junit.jupiter.api.Test;

class ManyLooksTest {
  private static Call call(String bone, String person, String taxon) {
    return new Call(
        0,
        new BoneId(bone),
        new TaxonName(taxon),
        Qualifier.NONE,
        new PersonId(person),
        Instant.EPOCH,
        "by eye",
        false);
  }

  /** The 30 subjects of Fleiss 1971 as bones, his five categories as taxa, his six people. */
  private static List<ManyLooks> fleiss(Queued.Why why) {
    List<ManyLooks> looks = new ArrayList<>();
    for (OutsideTable.Row row : OutsideTable.read("data/fleiss1971_ratings.csv").rows()) {
      List<Call> calls = new ArrayList<>();
      for (String rater : List.of("r1", "r2", "r3", "r4", "r5", "r6")) {
        calls.add(call("b" + looks.size(), rater, "Taxon " + row.count(rater)));
      }
      looks.add(new ManyLooks(calls, why));
    }
    return looks;
  }

  // R 4.2.2, own formula after Fleiss 1971: expected/g_kappa.csv, row fleiss1971.
  @Test
  void agreementOfSixPeopleIsThatOfR() {
    OutsideTable.Row r =
        OutsideTable.read("expected/g_kappa.csv").rows().stream()
            .filter(row -> row.text("set").equals("fleiss1971"))
            .findFirst()
            .orElseThrow();
    Kappa kappa = ManyLooks.fleiss(fleiss(Queued.Why.EVERY_NTH)).value().orElseThrow();
    assertEquals(r.number("kappa"), kappa.value(), 1e-12); // order of summation only
    assertEquals(30, kappa.subjects());
  }

  @Test
  void targetedLooksAndBonesWithFewerCallsAreLeftOut() {
    List<ManyLooks> looks = new ArrayList<>(fleiss(Queued.Why.EVERY_NTH));
    double alone = ManyLooks.fleiss(looks).value().orElseThrow().value();
    looks.addAll(fleiss(Queued.Why.FIRST_OF_ITS_KIND));
    looks.add(
        new ManyLooks(
            List.of(call("x", "r1", "Taxon 1"), call("x", "r2", "Taxon 2")), Queued.Why.EVERY_NTH));
    assertEquals(alone, ManyLooks.fleiss(looks).value().orElseThrow().value());
  }

  @Test
  void twoPeopleAloneAreNotEnough() {
    ManyLooks two =
        new ManyLooks(
            List.of(call("x", "r1", "Taxon 1"), call("x", "r2", "Taxon 2")), Queued.Why.EVERY_NTH);
    assertInstanceOf(NotEstimable.class, ManyLooks.fleiss(List.of(two, two, two)));
  }
}
