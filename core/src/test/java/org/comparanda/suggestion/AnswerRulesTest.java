package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.comparanda.statistics.Proportion;
import org.comparanda.taxon.Growth;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.junit.jupiter.api.Test;

/** Expected answers follow from the rules of the house, counted by hand in each case. */
class AnswerRulesTest {
  private static final TaxonTree TREE =
      new TaxonTree(
          List.of(
              taxon("Mammalia", ""),
              taxon("Caprini", "Mammalia"),
              taxon("Ovis aries", "Caprini"),
              taxon("Capra hircus", "Caprini"),
              taxon("Sus scrofa", "Mammalia")),
          List.of(Set.of(new TaxonName("Ovis aries"), new TaxonName("Capra hircus"))));
  private static final AnswerRules RULES = new AnswerRules(Thresholds.withDefaults(), TREE);

  private static Taxon taxon(String name, String parent) {
    Optional<TaxonName> above =
        parent.isEmpty() ? Optional.empty() : Optional.of(new TaxonName(parent));
    return new Taxon(
        new TaxonName(name), "", "", "rank", above, Growth.DETERMINATE, false, "invented");
  }

  private static TaxonFit fit(String taxon, double share, double typicality) {
    return new TaxonFit(new TaxonName(taxon), share, typicality, 1, 10);
  }

  private static Verdict decide(TaxonFit... fits) {
    return RULES.decide(List.of(fits), t -> true);
  }

  private static List<String> marks(Verdict verdict) {
    return verdict.candidates().stream().map(c -> c.taxon() + " " + c.mark()).toList();
  }

  @Test
  void shareOfOneDoesNotHelpAStranger() {
    Verdict verdict = decide(fit("Ovis aries", 1.0, 1e-20), fit("Sus scrofa", 1e-30, 1e-25));
    assertEquals(Answer.NOTHING_FITS, verdict.answer());
    assertEquals(List.of(), verdict.candidates());
  }

  @Test
  void bestTypicalityJustUnderTheBarIsAPoorFit() {
    Verdict verdict = decide(fit("Ovis aries", 0.99, 0.0499), fit("Sus scrofa", 0.01, 0.009));
    assertEquals(Answer.POOR_FIT, verdict.answer());
    assertEquals(List.of("Ovis aries POOR_FIT"), marks(verdict));
  }

  @Test
  void oneIsNamedOnlyThroughTheGate() {
    List<TaxonFit> fits = List.of(fit("Ovis aries", 0.95, 0.05), fit("Capra hircus", 0.05, 0.3));
    Verdict open = RULES.decide(fits, t -> true);
    assertEquals(Answer.FITS_ONE, open.answer());
    assertEquals(List.of(new TaxonName("Capra hircus")), open.lessLikely());
    assertEquals(Answer.NEVER_TESTED, RULES.decide(fits, t -> false).answer());
  }

  @Test
  void largestShareOfPoorTypicalityIsNotNamedAlone() {
    Verdict verdict = decide(fit("Ovis aries", 0.97, 0.02), fit("Capra hircus", 0.03, 0.4));
    assertEquals(Answer.FITS_A_FEW, verdict.answer());
    assertEquals(List.of("Ovis aries POOR_FIT", "Capra hircus FITS"), marks(verdict));
  }

  @Test
  void aLoneCandidateIsJoinedByTheNextInShare() {
    Verdict verdict = decide(fit("Ovis aries", 0.93, 0.5), fit("Capra hircus", 0.07, 0.001));
    assertEquals(Answer.FITS_A_FEW, verdict.answer());
    assertEquals(List.of("Ovis aries FITS", "Capra hircus NEXT_BEST"), marks(verdict));
  }

  @Test
  void whereNoneQualifiesTheBestTypicalityLeads() {
    Verdict verdict = decide(fit("Ovis aries", 0.995, 0.005), fit("Capra hircus", 0.005, 0.4));
    assertEquals(Answer.FITS_A_FEW, verdict.answer());
    assertEquals(List.of("Capra hircus NEXT_BEST", "Ovis aries NEXT_BEST"), marks(verdict));
  }

  @Test
  void sixCandidatesOfOneGroupAreTheGroup() {
    List<Taxon> taxa = new ArrayList<>(List.of(taxon("root", ""), taxon("group", "root")));
    List<TaxonFit> fits = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      taxa.add(taxon("t" + i, "group"));
      fits.add(fit("t" + i, 1 / 6.0, 0.5));
    }
    AnswerRules rules = new AnswerRules(Thresholds.withDefaults(), new TaxonTree(taxa, List.of()));
    Verdict verdict = rules.decide(fits, t -> true);
    assertEquals(Answer.FITS_GROUP_ONLY, verdict.answer());
    assertEquals(Optional.of(new TaxonName("group")), verdict.group());
    assertEquals(
        Answer.FITS_A_FEW,
        new AnswerRules(Thresholds.withDefaults(), TaxonTree.empty())
            .decide(fits, t -> true)
            .answer(),
        "only the root holds them all");
  }

  @Test
  void gateNeedsTenOfTenNotEightOfTen() {
    double bar = Thresholds.withDefaults().gateLowerLimit();
    assertTrue(new Proportion(10, 10).wilson(0.95).lower() >= bar);
    assertFalse(new Proportion(8, 10).wilson(0.95).lower() >= bar);
    assertFalse(new Proportion(0, 0).wilson(0.95).lower() >= bar);
  }

  @Test
  void everyTableOfSharesGetsOneAnswerThatFollowsFromTheRules() {
    SplittableRandom random = new SplittableRandom(20417);
    for (int round = 0; round < 20_000; round++) {
      List<TaxonFit> fits = random(random);
      boolean gate = random.nextBoolean();
      Verdict verdict = RULES.decide(fits, t -> gate);
      double best = fits.stream().mapToDouble(TaxonFit::typicality).max().orElseThrow();
      String where = "seed 20417, round " + round + ": " + fits;
      assertEquals(best < 0.01, verdict.answer() == Answer.NOTHING_FITS, where);
      assertEquals(best >= 0.01 && best < 0.05, verdict.answer() == Answer.POOR_FIT, where);
      boolean one = best >= 0.05 && fits.get(0).share() >= 0.95 && fits.get(0).typicality() >= 0.05;
      assertEquals(one && gate, verdict.answer() == Answer.FITS_ONE, where);
      assertEquals(one && !gate, verdict.answer() == Answer.NEVER_TESTED, where);
      if (verdict.answer() == Answer.FITS_A_FEW) {
        assertTrue(verdict.taxa().size() >= 2, where);
      }
    }
  }

  private static List<TaxonFit> random(SplittableRandom random) {
    int taxa = 1 + random.nextInt(12);
    double[] weights = new double[taxa];
    double sum = 0;
    for (int i = 0; i < taxa; i++) {
      weights[i] = Math.exp(12 * random.nextDouble());
      sum += weights[i];
    }
    List<TaxonFit> fits = new ArrayList<>();
    for (int i = 0; i < taxa; i++) {
      double typicality = Math.pow(random.nextDouble(), 1 + random.nextInt(12));
      fits.add(fit("t" + i, weights[i] / sum, typicality));
    }
    fits.sort(Comparator.comparingDouble(TaxonFit::share).reversed());
    return fits;
  }
}
