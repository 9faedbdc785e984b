package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A bone lies far outside its own taxon, the size and all proportions taken together, its own
 * animal left out.
 *
 * @param level so rarely a sound bone would lie as far out
 */
record Outlier(double level) implements ShelfCheck {
  static final double USUAL_LEVEL = 0.001;

  @Override
  public FindingKind kind() {
    return FindingKind.OUTLIER;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    List<Finding> findings = new ArrayList<>();
    for (ElementSpread spread : entries.spreads().values()) {
      for (BoneEntry bone : spread.bones()) {
        if (entries.stopped()) {
          return findings;
        }
        spread
            .judge(bone)
            .filter(judged -> judged.typicality() < level)
            .ifPresent(judged -> findings.add(finding(bone, judged)));
      }
    }
    return findings;
  }

  private Finding finding(BoneEntry bone, Judged judged) {
    Judged.Expected oddest = judged.oddest();
    double mm = bone.value(oddest.code());
    return Finding.ofValue(
            kind(),
            bone,
            oddest.code().value(),
            mm,
            "Fewer than %s of %s lie as far from the others; %s is oddest: %s where the rest lets expect %s."
                .formatted(
                    chance(judged.typicality()),
                    bone.taxon().map(Object::toString).orElse("its kind"),
                    oddest.code(),
                    Millimetres.number(mm),
                    rounded(mm / Math.exp(oddest.residual()))),
            "Measure it again, and look whether the bone belongs to this animal and taxon.")
        .restingOn(all(bone));
  }

  /**
   * Its taxon and all its values, in the order of their codes: which of them is oddest may change.
   */
  private static String all(BoneEntry bone) {
    return bone.taxon().map(Object::toString).orElse("")
        + bone.values().entrySet().stream()
            .map(v -> ", " + v.getKey() + " " + Millimetres.number(v.getValue()))
            .collect(Collectors.joining());
  }

  private static String chance(double p) {
    return p < 1e-6 ? "1 in a million" : "1 in " + Math.round(Math.floor(1 / p));
  }

  private static String rounded(double mm) {
    return new java.math.BigDecimal(mm)
        .round(new java.math.MathContext(3))
        .stripTrailingZeros()
        .toPlainString();
  }
}
