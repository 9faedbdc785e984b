package org.comparanda.suggestion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.BoneState;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Fusion;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.outside.ProofRecord;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

/**
 * Whatever the shelf and whatever the bone, there is exactly one answer, and it keeps the rules.
 */
class AnyInputTest {
  private static final List<ElementKey> ELEMENTS =
      List.of(new ElementKey("humerus"), new ElementKey("femur"), new ElementKey("rib"));
  private static final int SHELVES = ProofRecord.full() ? 60 : 26;
  private static final int BONES = 50;

  @Test
  void everyBoneGetsOneAnswerThatKeepsTheRules() {
    Set<Answer> seen = EnumSet.noneOf(Answer.class);
    Set<Suggestion.Missing.Way> ways = EnumSet.noneOf(Suggestion.Missing.Way.class);
    for (int seed = 0; seed < SHELVES; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Shelf shelf = shelf(random);
      ComparisonRules rules = rules(random, shelf);
      Comparison comparison = OutsideShelf.compare(shelf, rules);
      for (int i = 0; i < BONES; i++) {
        BoneInHand bone = bone(random, shelf);
        Suggestion suggestion = comparison.suggest(bone);
        String where = "seed " + seed + ", bone " + i + ": " + bone + "\n" + suggestion;
        seen.add(suggestion.answer());
        ways.add(suggestion.basis().missing().way());
        keepsTheRules(suggestion, bone, shelf, where);
        assertEquals(suggestion, comparison.suggest(bone), "asked twice, " + where);
      }
    }
    assertEquals(
        EnumSet.complementOf(EnumSet.of(Answer.FITS_GROUP_ONLY)), seen, "the tree is empty");
    assertEquals(EnumSet.allOf(Suggestion.Missing.Way.class), ways);
  }

  private static void keepsTheRules(Suggestion s, BoneInHand bone, Shelf shelf, String where) {
    assertFalse(s.sentence().isBlank(), where);
    boolean fitted =
        !EnumSet.of(Answer.YOUNG_BONE, Answer.NOT_FITTED, Answer.SHELF_TOO_THIN)
            .contains(s.answer());
    assertEquals(fitted, !s.taxa().isEmpty(), where);
    assertEquals(
        s.answer() == Answer.NOTHING_FITS || s.answer() == Answer.POOR_FIT,
        s.sentence().endsWith("If this could be human, press STOP."),
        where);
    double lowest = s.basis().missing().lowestTypicality().orElse(0.0);
    assertTrue(s.taxa().stream().allMatch(f -> lowest <= 1.02 * f.typicality()), where);
    double sum = 0;
    double before = Double.POSITIVE_INFINITY;
    for (TaxonFit fit : s.taxa()) {
      assertTrue(fit.share() <= before && fit.share() >= 0, where);
      assertTrue(fit.typicality() >= 0 && fit.typicality() <= 1, where);
      before = fit.share();
      sum += fit.share();
    }
    if (fitted) {
      assertEquals(1, sum, 1e-9, where); // sum of at most a dozen rounded shares
    }
    Set<TaxonName> drawer = new HashSet<>(s.drawer().stream().map(DrawerEntry::taxon).toList());
    s.taxa().forEach(f -> assertEquals(f.typicality() < 0.01, drawer.contains(f.taxon()), where));
    bone.animal()
        .ifPresent(
            own -> assertTrue(s.nearest().stream().noneMatch(n -> n.animal().equals(own)), where));
    s.nearest()
        .forEach(
            n ->
                assertEquals(
                    n.drawer().isPresent(),
                    shelf.animal(n.animal()).orElseThrow().source() == Source.OWN_DRAWER,
                    where));
  }

  private static ComparisonRules rules(SplittableRandom random, Shelf shelf) {
    ComparisonRules rules =
        ComparisonRules.withDefaults()
            .withAge(any(random, EnumSet.allOf(BoneAge.class)))
            .withScale(any(random, EnumSet.allOf(Scale.class)))
            .withCounting(random.nextInt(4) == 0 ? Counting.BONES : Counting.ANIMALS);
    return switch (random.nextInt(5)) {
      case 0 -> rules.withPriors(Priors.shelf());
      case 1 ->
          rules.withPriors(
              Priors.list(Map.of(new TaxonName("t0"), 0.9, new TaxonName("t2"), 0.1), "a list"));
      case 2 ->
          shelf.taxa().isEmpty()
              ? rules
              : rules.withSetAside(List.of(new SetAside(shelf.taxa().get(0), "not here")));
      default -> rules;
    };
  }

  private static <T> T any(SplittableRandom random, Set<T> set) {
    return List.copyOf(set).get(random.nextInt(set.size()));
  }

  private static Shelf shelf(SplittableRandom random) {
    int taxa = 1 + random.nextInt(5);
    List<Animal> animals = new ArrayList<>();
    for (int t = 0; t < taxa; t++) {
      int count = random.nextInt(18);
      double size = 20 + 30 * random.nextDouble();
      for (int a = 0; a < count; a++) {
        List<ShelfBone> bones = new ArrayList<>();
        for (int b = 0; b < 1 + random.nextInt(3); b++) {
          bones.add(
              new ShelfBone(
                  ELEMENTS.get(random.nextInt(2)),
                  any(random, EnumSet.allOf(Side.class)),
                  Portion.WHOLE,
                  random.nextInt(12) == 0 ? Set.of(Flag.CAST) : Set.of(),
                  values(random, size)));
        }
        animals.add(animal(random, animals.size(), "t" + t, bones));
      }
    }
    return new Shelf(animals);
  }

  private static Animal animal(
      SplittableRandom random, int number, String taxon, List<ShelfBone> bones) {
    Source source = any(random, EnumSet.allOf(Source.class));
    return new Animal(
        OutsideShelf.id(number),
        random.nextInt(20) == 0 ? Optional.empty() : Optional.of(new TaxonName(taxon)),
        source,
        source == Source.OWN_DRAWER ? Optional.of("A 1") : Optional.empty(),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        random.nextInt(20) == 0 ? Set.of(Flag.JUVENILE) : Set.of(),
        "",
        bones);
  }

  private static Map<MeasurementCode, Double> values(SplittableRandom random, double size) {
    Map<MeasurementCode, Double> values = new TreeMap<>();
    for (int j = 0; j < 4; j++) {
      if (random.nextInt(5) > 0) {
        double value = size * (1 + 0.3 * j) * (1 + 0.05 * (random.nextDouble() - 0.5));
        values.put(new MeasurementCode("m" + j), value);
      }
    }
    return values;
  }

  private static BoneInHand bone(SplittableRandom random, Shelf shelf) {
    Map<MeasurementCode, Double> values = values(random, 15 + 40 * random.nextDouble());
    switch (random.nextInt(12)) {
      case 0 -> values.clear();
      case 1 -> values.put(new MeasurementCode("m1"), Double.NaN);
      case 2 -> values.put(new MeasurementCode("m2"), -3.0);
      case 3 -> values.put(new MeasurementCode("not on the shelf"), 5.0);
      case 4 -> values.put(new MeasurementCode("m0"), Double.POSITIVE_INFINITY);
      default -> {}
    }
    Optional<AnimalId> own =
        shelf.animals().isEmpty() || random.nextInt(3) > 0
            ? Optional.empty()
            : Optional.of(shelf.animals().get(random.nextInt(shelf.animals().size())).id());
    Set<Flag> flags =
        random.nextInt(6) == 0 ? Set.of(any(random, EnumSet.allOf(Flag.class))) : Set.of();
    Fusion end = random.nextInt(15) == 0 ? Fusion.UNFUSED : Fusion.FUSED;
    return new BoneInHand(
        "bone",
        own,
        ELEMENTS.get(random.nextInt(10) == 0 ? 2 : random.nextInt(2)),
        any(random, EnumSet.allOf(Side.class)),
        any(random, EnumSet.allOf(Portion.class)),
        new BoneState(end, Fusion.CANT_SEE, flags),
        values);
  }
}
