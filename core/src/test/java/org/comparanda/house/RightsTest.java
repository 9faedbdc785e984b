package org.comparanda.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.NotEstimable;
import org.junit.jupiter.api.Test;

class RightsTest {
  private final List<Grant> rows = new ArrayList<>();

  private static Grant grant(String person, Right right, Grant.Kind kind, String by) {
    return new Grant(0, new PersonId(person), right, kind, new PersonId(by), Instant.EPOCH, "");
  }

  private Optional<String> tried(String person, Right right, Grant.Kind kind, String by) {
    Grant next = grant(person, right, kind, by);
    Optional<String> refusal = new Rights(rows).refusal(next);
    if (refusal.isEmpty()) {
      rows.add(next);
    }
    return refusal;
  }

  @Test
  void firstKeeperNamesThemselvesAndKeepersAloneGive() {
    assertTrue(tried("ann", Right.OPEN_PLACES, Grant.Kind.GIVEN, "ann").isPresent());
    assertTrue(tried("ben", Right.KEEPER, Grant.Kind.GIVEN, "ann").isPresent());
    assertEquals(Optional.empty(), tried("ann", Right.KEEPER, Grant.Kind.GIVEN, "ann"));
    assertTrue(tried("ben", Right.KEEPER, Grant.Kind.GIVEN, "ben").isPresent());
    assertEquals(Optional.empty(), tried("ben", Right.OPEN_PLACES, Grant.Kind.GIVEN, "ann"));
    Rights rights = new Rights(rows);
    assertTrue(rights.holds(new PersonId("ben"), Right.OPEN_PLACES));
    assertFalse(rights.holds(new PersonId("ben"), Right.OPEN_STOP));
    assertInstanceOf(
        NotEstimable.class, rights.asked(new PersonId("ben"), Right.OPEN_STOP, "it stays shut"));
  }

  @Test
  void withdrawnRightIsGoneAndTheLastKeeperStays() {
    tried("ann", Right.KEEPER, Grant.Kind.GIVEN, "ann");
    tried("ben", Right.OPEN_PLACES, Grant.Kind.GIVEN, "ann");
    tried("ben", Right.OPEN_PLACES, Grant.Kind.WITHDRAWN, "ann");
    assertFalse(new Rights(rows).holds(new PersonId("ben"), Right.OPEN_PLACES));
    assertEquals(
        Optional.of("\"ann\" is the last keeper."),
        tried("ann", Right.KEEPER, Grant.Kind.WITHDRAWN, "ann"));
  }
}
