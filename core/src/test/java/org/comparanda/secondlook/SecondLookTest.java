package org.comparanda.secondlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.NotEstimable;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.comparanda.tray.Call;
import org.comparanda.tray.Qualifier;
import org.junit.jupiter.api.Test;

class SecondLookTest {
  private static final TaxonTree TREE = ReferenceTables.shipped().taxa();
  private static final String SHEEP = "Ovis aries";
  private static final String GOAT = "Capra hircus";

  private static Call call(String bone, String taxon, Qualifier qualifier, String person) {
    return new Call(
        0,
        new BoneId(bone),
        new TaxonName(taxon),
        qualifier,
        new PersonId(person),
        Instant.parse("2026-11-25T09:00:00Z"),
        "by eye",
        false);
  }

  private static List<TwoLooks> looks(int count, String first, String second, Queued.Why why) {
    List<TwoLooks> looks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String bone = first + second + why + i;
      looks.add(
          new TwoLooks(
              call(bone, first, Qualifier.NONE, "a"), call(bone, second, Qualifier.CF, "b"), why));
    }
    return looks;
  }

  private static FirstLook look(String bone, String called, String suggested, double typicality) {
    return new FirstLook(
        call(bone, called, Qualifier.NONE, "a"),
        Optional.of(suggested).filter(s -> !s.isEmpty()).map(TaxonName::new),
        Optional.of(typicality));
  }

  // By hand: 3 and 6 are every third; 1 is the first sheep, 4 the first goat, 5 was called against
  // the suggestion, 2 is an ordinary sheep, 7 of low typicality.
  @Test
  void everyThirdIsDrawnAndTheOthersOnlyForAReason() {
    List<Queued> queue =
        Queue.withDefaults()
            .withEveryNth(3)
            .of(
                List.of(
                    look("1", SHEEP, SHEEP, 0.5),
                    look("2", SHEEP, SHEEP, 0.5),
                    look("3", SHEEP, GOAT, 0.01),
                    look("4", GOAT, "", 0.5),
                    look("5", GOAT, SHEEP, 0.5),
                    look("6", GOAT, GOAT, 0.5),
                    look("7", GOAT, GOAT, 0.04)));
    assertEquals(
        List.of(
            new Queued(new BoneId("1"), Queued.Why.FIRST_OF_ITS_KIND),
            new Queued(new BoneId("3"), Queued.Why.EVERY_NTH),
            new Queued(new BoneId("4"), Queued.Why.FIRST_OF_ITS_KIND),
            new Queued(new BoneId("5"), Queued.Why.CALL_AGAINST_SUGGESTION),
            new Queued(new BoneId("6"), Queued.Why.EVERY_NTH),
            new Queued(new BoneId("7"), Queued.Why.LOW_TYPICALITY)),
        queue);
  }

  // By hand: 35 of 50 agree, chance 0.5·0.6 + 0.5·0.4 = 0.5, so (0.7 − 0.5)/0.5 = 0.4. The second
  // calls are all cf. and count as their taxon; nine targeted looks, all apart, change nothing.
  @Test
  void agreementComesFromTheEveryNthDrawAlone() {
    List<TwoLooks> looks = new ArrayList<>();
    looks.addAll(looks(20, SHEEP, SHEEP, Queued.Why.EVERY_NTH));
    looks.addAll(looks(5, SHEEP, GOAT, Queued.Why.EVERY_NTH));
    looks.addAll(looks(10, GOAT, SHEEP, Queued.Why.EVERY_NTH));
    looks.addAll(looks(15, GOAT, GOAT, Queued.Why.EVERY_NTH));
    looks.addAll(looks(9, SHEEP, "Dama dama", Queued.Why.CALL_AGAINST_SUGGESTION));
    Agreement agreement = new Agreement(looks, TREE);
    assertEquals(0.4, agreement.kappa().value().orElseThrow().value(), 1e-15);
    assertEquals(
        Map.of(new Agreement.Confusion(new TaxonName(GOAT), new TaxonName(SHEEP)), 15),
        agreement.confusions());
    assertEquals(
        Map.of(new Agreement.Confusion(new TaxonName("Dama dama"), new TaxonName(SHEEP)), 9),
        agreement.confusionsOfTargeted());
  }

  // By hand. Species: 4 sheep and 4 goats agree, 2 sheep were called Ovis: p_o 0.8, p_e = 0.6·0.4 +
  // 0.4·0.4 = 0.4, κ = 0.4/0.6. Genus: all ten agree, κ = 1.
  @Test
  void callAtAHigherGroupAgreesAtThatGroupOnly() {
    List<TwoLooks> looks = new ArrayList<>();
    looks.addAll(looks(4, SHEEP, SHEEP, Queued.Why.EVERY_NTH));
    looks.addAll(looks(4, GOAT, GOAT, Queued.Why.EVERY_NTH));
    looks.addAll(looks(2, SHEEP, "Ovis", Queued.Why.EVERY_NTH));
    Agreement agreement = new Agreement(looks, TREE);
    assertEquals(2 / 3.0, agreement.kappa().value().orElseThrow().value(), 1e-15);
    assertEquals(1.0, agreement.kappaAt("genus").value().orElseThrow().value(), 1e-15);
    assertEquals(Optional.of(new TaxonName("Ovis")), agreement.agreeAt(looks.get(9)));
  }

  @Test
  void callsAgreeOrAgreeAtAGroupOrDifferInsideOne() {
    Agreement agreement = new Agreement(List.of(), TREE);
    assertEquals(
        new Likeness(Likeness.Kind.AGREE, Optional.of(new TaxonName(SHEEP))),
        agreement.likeness(looks(1, SHEEP, SHEEP, Queued.Why.EVERY_NTH).get(0)));
    assertEquals(
        new Likeness(Likeness.Kind.AGREE_AT_GROUP, Optional.of(new TaxonName("Bovidae"))),
        agreement.likeness(looks(1, "Bovidae", SHEEP, Queued.Why.EVERY_NTH).get(0)));
    assertEquals(
        new Likeness(Likeness.Kind.DIFFER, Optional.of(new TaxonName("Caprini"))),
        agreement.likeness(looks(1, GOAT, SHEEP, Queued.Why.EVERY_NTH).get(0)));
  }

  @Test
  void agreementOnOneKindAloneIsNotEstimable() {
    assertInstanceOf(
        NotEstimable.class,
        new Agreement(looks(5, SHEEP, SHEEP, Queued.Why.EVERY_NTH), TREE).kappa());
  }

  @Test
  void onePersonCannotLookTwice() {
    Call one = call("1", SHEEP, Qualifier.NONE, "a");
    assertThrows(
        IllegalArgumentException.class, () -> new TwoLooks(one, one, Queued.Why.EVERY_NTH));
  }
}
