package org.comparanda.tray;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.junit.jupiter.api.Test;

/** Which call holds, and which goes against the numbers. */
class CallRulesTest {
  private static final TaxonTree TREE = ReferenceTables.shipped().taxa();

  private static Call call(long id, String taxon, Call.Kind kind, long answers) {
    Call plain =
        new Call(
            id,
            new BoneId("K-1"),
            new TaxonName(taxon),
            Qualifier.NONE,
            new PersonId("p" + id),
            Instant.EPOCH.plusSeconds(id),
            "by eye",
            false);
    return kind == Call.Kind.CALL ? plain : plain.as(kind, answers);
  }

  private static String holding(Call... calls) {
    return new CallHistory(List.of(calls)).holding().map(c -> c.taxon().value()).orElse("");
  }

  @Test
  void secondLookHoldsOnlyOnceItWasResolvedSo() {
    Call first = call(1, "Ovis aries", Call.Kind.CALL, 0);
    Call second = call(2, "Capra hircus", Call.Kind.SECOND_LOOK, 1);
    assertEquals("Ovis aries", holding(first, second));
    assertEquals("Caprini", holding(first, second, call(3, "Caprini", Call.Kind.CONSENSUS, 1)));
    assertEquals(
        "Capra hircus", holding(first, second, call(3, "Capra hircus", Call.Kind.THIRD_PERSON, 1)));
  }

  @Test
  void callTakenBackHoldsNoMoreAndStaysInTheHistory() {
    Call first = call(1, "Ovis aries", Call.Kind.CALL, 0);
    Call later = call(2, "Capra hircus", Call.Kind.CALL, 0);
    Call back = call(3, "Capra hircus", Call.Kind.WITHDRAWAL, 2);
    assertEquals("Ovis aries", holding(first, later, back));
    assertEquals("", holding(later, back));
    assertEquals(3, new CallHistory(List.of(first, later, back)).calls().size());
  }

  // Decided by hand on the shipped tree: Ovis and Capra are both Caprini.
  @Test
  void callGoesAgainstWhatIsNamedUnlessItIsOneOfThemOrAGroupAroundOrInside() {
    Beside sheep =
        new Beside(
            List.of(new TaxonName("Ovis aries")),
            List.of(new TaxonName("Dama dama")),
            Optional.empty());
    assertFalse(sheep.against(new TaxonName("Ovis aries"), TREE));
    assertFalse(sheep.against(new TaxonName("Ovis"), TREE));
    assertFalse(sheep.against(new TaxonName("Caprini"), TREE));
    assertTrue(sheep.against(new TaxonName("Capra hircus"), TREE));
    assertTrue(sheep.against(new TaxonName("Dama dama"), TREE));
    Beside group = new Beside(List.of(new TaxonName("Caprini")), List.of(), Optional.empty());
    assertFalse(group.against(new TaxonName("Capra hircus"), TREE));
    assertFalse(Beside.nothing().against(new TaxonName("Capra hircus"), TREE));
  }
}
