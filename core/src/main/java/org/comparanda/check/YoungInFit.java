package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.Flag;

/** The age class says that the animal was growing, and no flag keeps its bones out of fits. */
record YoungInFit() implements ShelfCheck {
  private static final Set<String> YOUNG =
      Set.of(
          "foetal",
          "fetal",
          "neonate",
          "neonatal",
          "newborn",
          "infant",
          "juvenile",
          "immature",
          "young",
          "calf",
          "lamb",
          "kid",
          "foal",
          "piglet",
          "puppy",
          "hatchling",
          "nestling");

  @Override
  public FindingKind kind() {
    return FindingKind.YOUNG_IN_FIT;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    List<Finding> findings = new ArrayList<>();
    entries
        .byAnimal()
        .forEach(
            (animal, rows) -> {
              List<BoneEntry> young =
                  rows.stream().filter(r -> r.feedsFits() && says(r.ageClass())).toList();
              if (!young.isEmpty()) {
                findings.add(finding(animal, young));
              }
            });
    return findings;
  }

  private Finding finding(String animal, List<BoneEntry> young) {
    String age = young.get(0).ageClass();
    return Finding.ofAnimal(
            kind(),
            animal,
            ShelfEntries.bone(young),
            "age_class",
            age,
            "%s is recorded as %s, but its bones feed fits of adults.".formatted(animal, age),
            "Flag its bones as juvenile, or correct the age class.")
        .correctedBy(Optional.of(new Correction.AnimalFlag(Flag.JUVENILE)));
  }

  private static boolean says(String ageClass) {
    return java.util.Arrays.stream(ageClass.toLowerCase(Locale.ROOT).split("[^a-z]+"))
        .anyMatch(YOUNG::contains);
  }
}
