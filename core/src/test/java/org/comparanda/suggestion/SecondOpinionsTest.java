package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.outside.OutsideSet;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.Folds;
import org.junit.jupiter.api.Test;

class SecondOpinionsTest {
  private static final OutsideSet MIDGE = OutsideSet.named("midge");
  private static final List<MeasurementCode> ALL =
      MIDGE.variables().stream().map(MeasurementCode::new).toList();

  private static Comparison midges(ComparisonRules rules) {
    return OutsideShelf.compare(OutsideShelf.of(MIDGE), rules);
  }

  private static Outcome<SecondOpinions> opinions(Comparison comparison) {
    return comparison.secondOpinions(OutsideShelf.ELEMENT, ALL, () -> false);
  }

  @Test
  void everyMethodIsComparedOnEveryAnimalAndTwiceAlike() {
    SecondOpinions first = opinions(midges(ComparisonRules.withDefaults())).value().orElseThrow();
    SecondOpinions again = opinions(midges(ComparisonRules.withDefaults())).value().orElseThrow();
    assertEquals(first, again);
    assertEquals(Method.values().length - 1, first.methods().size());
    first.methods().forEach(m -> assertEquals(15, m.hits().tries(), m.toString()));
    assertTrue(first.byRule().startsWith("predictive, by rule"), first.byRule());
  }

  @Test
  void everyAnimalIsInOneFold() {
    Folds folds = Folds.of(MIDGE.rows(), 10, 20417);
    Set<Integer> seen = new TreeSet<>();
    int units = 0;
    for (Set<Integer> fold : folds.units()) {
      seen.addAll(fold);
      units += fold.size();
      assertTrue(fold.size() <= 2, "15 animals dealt to ten folds");
    }
    assertEquals(15, units);
    assertEquals(15, seen.size());
  }

  // The regularised method tunes twelve settings inside each fold, thousands of asks; a stop there
  // ends after one more ask for each setting and step, not after the fold.
  @Test
  void aStopEndsItInsideAFoldAndItGoesOnFromThere() {
    Comparison comparison = midges(ComparisonRules.withDefaults());
    AtomicInteger asked = new AtomicInteger();
    Outcome<SecondOpinions> stopped =
        comparison.secondOpinions(OutsideShelf.ELEMENT, ALL, () -> asked.incrementAndGet() > 500);
    assertEquals(
        "The comparison of methods was stopped.", stopped.fold(s -> "", none -> none.reason()));
    assertTrue(asked.get() < 530, asked + " asks");
    assertEquals(
        opinions(midges(ComparisonRules.withDefaults())).value(), opinions(comparison).value());
  }

  @Test
  void theHousesChoiceIsTakenAndNamed() {
    ComparisonRules rules =
        ComparisonRules.withDefaults().withHouseChoice(OutsideShelf.ELEMENT, Method.QUADRATIC);
    assertEquals("quadratic, the house's choice for this element", method(rules));
    assertEquals("linear, as chosen", method(rules.withMethod(Method.LINEAR)));
  }

  private static String method(ComparisonRules rules) {
    return midges(rules)
        .suggest(
            OutsideShelf.inHand(
                "x",
                Optional.empty(),
                OutsideShelf.bone(Side.NOT_KNOWN, MIDGE.variables(), 1.4, 1.8)))
        .basis()
        .method();
  }
}
