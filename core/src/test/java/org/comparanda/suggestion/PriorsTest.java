package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

/**
 * One measurement, worked by hand. A: 8 to 12, mean 10, squares 10; B: 11 to 15 twice, mean 13,
 * squares 20; W = 30 / (15 − 2). At 11.3: D² = 1.69 · 13/30 from A, 2.89 · 13/30 from B, so A : B
 * is exp(0.26) with equal priors and exp(0.26) / 2 by shelf counts.
 */
class PriorsTest {
  private static final TaxonName A = new TaxonName("A");
  private static final TaxonName B = new TaxonName("B");
  private static final ComparisonRules RULES =
      ComparisonRules.withDefaults().withMethod(Method.LINEAR).withScale(Scale.RAW);
  private static final Shelf SHELF = shelf();

  private static Shelf shelf() {
    List<Animal> animals = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      animals.add(one(animals.size(), "A", 8 + i));
    }
    for (int i = 0; i < 10; i++) {
      animals.add(one(animals.size(), "B", 11 + i % 5));
    }
    return new Shelf(animals);
  }

  private static Animal one(int number, String taxon, double value) {
    return OutsideShelf.animal(
        OutsideShelf.id(number),
        taxon,
        List.of(OutsideShelf.bone(Side.AXIAL, List.of("m"), value)));
  }

  private static Suggestion answer(ComparisonRules rules, double value) {
    return OutsideShelf.compare(SHELF, rules)
        .suggest(
            OutsideShelf.inHand(
                "x", Optional.empty(), OutsideShelf.bone(Side.AXIAL, List.of("m"), value)));
  }

  private static double share(Suggestion s, TaxonName taxon) {
    return s.taxa().stream().filter(f -> f.taxon().equals(taxon)).findFirst().orElseThrow().share();
  }

  private static List<String> dependence(Suggestion s) {
    return s.details().stream().filter(d -> d.startsWith("This answer depends")).toList();
  }

  // 1e-12: the exponent is reckoned through a Cholesky factor
  @Test
  void equalShelfAndListedPriorsGiveTheSharesOfTheHandCalculation() {
    double odds = Math.exp(0.26);
    assertEquals(odds / (odds + 1), share(answer(RULES, 11.3), A), 1e-12);
    assertEquals(
        odds / (odds + 2), share(answer(RULES.withPriors(Priors.shelf()), 11.3), A), 1e-12);
    Priors list = Priors.list(Map.of(A, 6.0, B, 2.0), "valley");
    Suggestion listed = answer(RULES.withPriors(list), 11.3);
    assertEquals(3 * odds / (3 * odds + 1), share(listed, A), 1e-12);
    assertEquals("valley", listed.basis().priors());
  }

  @Test
  void anAnswerThatOtherPriorsWouldTurnSaysSo() {
    assertEquals(
        List.of(
            "This answer depends on what was likely before: if each kind were as common as on the"
                + " shelf, B would have the largest share, 61 %."),
        dependence(answer(RULES, 11.3)));
    assertEquals(
        List.of(
            "This answer depends on what was likely before: if every kind were equally likely, A"
                + " would have the largest share, 56 %."),
        dependence(answer(RULES.withPriors(Priors.shelf()), 11.3)));
  }

  // At 10: A : B is exp(1.95), or half of that by shelf counts; both stay candidates.
  @Test
  void anAnswerThatHoldsUnderAllNamedPriorsSaysNothing() {
    assertEquals(List.of(), dependence(answer(RULES, 10)));
    assertEquals(List.of(), dependence(answer(RULES.withPriors(Priors.shelf()), 10)));
  }

  @Test
  void aListThatNamesOneTaxonAloneSaysWhatItHides() {
    Suggestion listed = answer(RULES.withPriors(Priors.list(Map.of(A, 1.0), "cave list")), 11.3);
    assertEquals(1, share(listed, A));
    List<String> said = dependence(listed);
    assertEquals(2, said.size(), listed.details().toString());
    assertEquals(
        "This answer depends on what was likely before: if every kind were equally likely, A would"
            + " have the largest share, 56 %, and the answer would be \"Fits a few: A or B\".",
        said.get(0));
  }

  @Test
  void aTaxonSetAsideIsNamedEvenWhereNothingIsFitted() {
    ComparisonRules rules = RULES.withSetAside(List.of(new SetAside(A, "came with the railway")));
    Suggestion fitted = answer(rules, 11.3);
    String said = "Set aside: A (came with the railway).";
    assertTrue(fitted.details().contains(said), fitted.details().toString());
    assertEquals(List.of(B), fitted.taxa().stream().map(TaxonFit::taxon).toList());
    Suggestion cast =
        OutsideShelf.compare(SHELF, rules)
            .suggest(
                new BoneInHand(
                    "y",
                    Optional.empty(),
                    OutsideShelf.ELEMENT,
                    Side.AXIAL,
                    Portion.WHOLE,
                    new BoneState(Fusion.FUSED, Fusion.FUSED, Set.of(Flag.CAST)),
                    Map.of(new MeasurementCode("m"), 11.3)));
    assertEquals(Answer.NOT_FITTED, cast.answer());
    assertTrue(cast.details().contains(said), cast.details().toString());
  }
}
