package org.comparanda.suggestion;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.BoneAge;
import org.comparanda.bone.ElementKey;

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
 * @param houseChoices method by element, taken where {@code method} is {@code AUTO}
 * @param language of the sentences; English where there are no words in it
 */
public record ComparisonRules(
    Scale scale,
    Method method,
    Priors priors,
    BoneAge age,
    Counting counting,
    Thresholds thresholds,
    List<SetAside> setAside,
    Map<ElementKey, Method> houseChoices,
    Locale language) {
  public ComparisonRules {
    setAside = List.copyOf(setAside);
    houseChoices = Collections.unmodifiableMap(new TreeMap<>(houseChoices));
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
        List.of(),
        Map.of(),
        Locale.ENGLISH);
  }

  public ComparisonRules withScale(Scale other) {
    return new ComparisonRules(
        other, method, priors, age, counting, thresholds, setAside, houseChoices, language);
  }

  public ComparisonRules withMethod(Method other) {
    return new ComparisonRules(
        scale, other, priors, age, counting, thresholds, setAside, houseChoices, language);
  }

  public ComparisonRules withPriors(Priors other) {
    return new ComparisonRules(
        scale, method, other, age, counting, thresholds, setAside, houseChoices, language);
  }

  public ComparisonRules withAge(BoneAge other) {
    return new ComparisonRules(
        scale, method, priors, other, counting, thresholds, setAside, houseChoices, language);
  }

  public ComparisonRules withCounting(Counting other) {
    return new ComparisonRules(
        scale, method, priors, age, other, thresholds, setAside, houseChoices, language);
  }

  public ComparisonRules withThresholds(Thresholds other) {
    return new ComparisonRules(
        scale, method, priors, age, counting, other, setAside, houseChoices, language);
  }

  public ComparisonRules withSetAside(List<SetAside> other) {
    return new ComparisonRules(
        scale, method, priors, age, counting, thresholds, other, houseChoices, language);
  }

  /** The same with answers in another language; what is reckoned does not change. */
  public ComparisonRules withLanguage(Locale other) {
    return new ComparisonRules(
        scale, method, priors, age, counting, thresholds, setAside, houseChoices, other);
  }

  /** The words that answers are made of. */
  Phrases phrases() {
    return Phrases.in(language);
  }

  /** The same with another method for one element, chosen by the house. */
  public ComparisonRules withHouseChoice(ElementKey element, Method choice) {
    Map<ElementKey, Method> choices = new TreeMap<>(houseChoices);
    choices.put(element, choice);
    return withHouseChoices(choices);
  }

  /** The same with other choices of the house. */
  public ComparisonRules withHouseChoices(Map<ElementKey, Method> choices) {
    return new ComparisonRules(
        scale, method, priors, age, counting, thresholds, setAside, choices, language);
  }

  /** The house's choice for an element, where the method is left to rule. */
  Optional<Method> houseChoice(ElementKey element) {
    return method == Method.AUTO
        ? Optional.ofNullable(houseChoices.get(element)).filter(m -> m != Method.AUTO)
        : Optional.empty();
  }
}
