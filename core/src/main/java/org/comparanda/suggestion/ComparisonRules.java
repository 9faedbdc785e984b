package org.comparanda.suggestion;

import java.util.List;
import org.comparanda.bone.BoneAge;

/**
 * How bones are compared with the shelf: options only, no data.
 *
 * @param scale logs, raw values or proportions
 * @param method how shares are reckoned
 * @param priors what was likely before, named
 * @param age age of the bones in hand; a fossil is never given a bare species
 * @param counting animals or bones as rows
 * @param thresholds numbers by which answers are decided
 * @param setAside taxa that cannot occur here
 */
public record ComparisonRules(
    Scale scale,
    Method method,
    Priors priors,
    BoneAge age,
    Counting counting,
    Thresholds thresholds,
    List<SetAside> setAside) {
  public ComparisonRules {
    setAside = List.copyOf(setAside);
  }

  /** Logs, method by rule, equal priors, age not known, animals as rows. */
  public static ComparisonRules withDefaults() {
    return new ComparisonRules(
        Scale.LN,
        Method.AUTO,
        Priors.equal(),
        BoneAge.NOT_KNOWN,
        Counting.ANIMALS,
        Thresholds.withDefaults(),
        List.of());
  }

  public ComparisonRules withScale(Scale other) {
    return new ComparisonRules(other, method, priors, age, counting, thresholds, setAside);
  }

  public ComparisonRules withMethod(Method other) {
    return new ComparisonRules(scale, other, priors, age, counting, thresholds, setAside);
  }

  public ComparisonRules withPriors(Priors other) {
    return new ComparisonRules(scale, method, other, age, counting, thresholds, setAside);
  }

  public ComparisonRules withAge(BoneAge other) {
    return new ComparisonRules(scale, method, priors, other, counting, thresholds, setAside);
  }

  public ComparisonRules withCounting(Counting other) {
    return new ComparisonRules(scale, method, priors, age, other, thresholds, setAside);
  }

  public ComparisonRules withThresholds(Thresholds other) {
    return new ComparisonRules(scale, method, priors, age, counting, other, setAside);
  }

  public ComparisonRules withSetAside(List<SetAside> other) {
    return new ComparisonRules(scale, method, priors, age, counting, thresholds, other);
  }
}
