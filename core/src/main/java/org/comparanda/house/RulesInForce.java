package org.comparanda.house;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.bone.ElementKey;
import org.comparanda.capture.PassRules;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.suggestion.Method;
import org.comparanda.suggestion.Priors;
import org.comparanda.suggestion.SetAside;
import org.comparanda.suggestion.Thresholds;
import org.comparanda.taxon.TaxonName;

/**
 * All rules of a house as they hold at one moment.
 *
 * @param contents what each rule is set to; one that is missing is as it is until set
 */
public record RulesInForce(Map<RuleName, String> contents) {
  public RulesInForce {
    Map<RuleName, String> copy = new EnumMap<>(RuleName.class);
    copy.putAll(contents);
    contents = Collections.unmodifiableMap(copy);
  }

  /** A house that has set nothing. */
  public static RulesInForce withDefaults() {
    return new RulesInForce(Map.of());
  }

  /** What settings in the order that they were made come to. */
  public static RulesInForce of(List<HouseRule> settings) {
    Map<RuleName, String> contents = new EnumMap<>(RuleName.class);
    settings.forEach(rule -> contents.put(rule.name(), rule.content()));
    return new RulesInForce(contents);
  }

  /** The same with one rule set; or why it can't be, with what is allowed. */
  public Outcome<RulesInForce> with(RuleName name, String content) {
    Optional<String> refusal = name.refusal(content);
    if (refusal.isPresent()) {
      return Outcome.none(name.word() + ": " + refusal.get(), "Set it to " + name.allowed() + ".");
    }
    Map<RuleName, String> changed = new TreeMap<>(contents);
    changed.put(name, content);
    RulesInForce set = new RulesInForce(changed);
    Thresholds limits = set.thresholds();
    return limits.nothingFits() <= limits.poorFit()
        ? Outcome.of(set)
        : Outcome.none(
            RuleName.NOTHING_FITS.word()
                + " would be "
                + limits.nothingFits()
                + ", above "
                + RuleName.POOR_FIT.word()
                + ", "
                + limits.poorFit()
                + ".",
            "What fits poorly must fit better than nothing: set the other one first.");
  }

  /** What a rule says now. */
  public String now(RuleName name) {
    return contents.getOrDefault(name, name.untilSet());
  }

  /** Whether a bone is called before what the numbers say is shown. */
  public boolean callFirst() {
    return now(RuleName.CALL_FIRST).equals("on");
  }

  /** The numbers that answers are decided by. */
  public Thresholds thresholds() {
    return new Thresholds(
        number(RuleName.NOTHING_FITS),
        number(RuleName.POOR_FIT),
        number(RuleName.ONE_SHARE),
        number(RuleName.CANDIDATE_SHARE),
        number(RuleName.WEAK_SHARE),
        number(RuleName.GATE_LOWER_LIMIT),
        Integer.parseInt(now(RuleName.MOST_NAMED)),
        Integer.parseInt(now(RuleName.DEGREES_NEEDED)),
        Integer.parseInt(now(RuleName.RULE_OUT_ANIMALS)),
        number(RuleName.CALIBRATED_MISS));
  }

  private double number(RuleName name) {
    return Double.parseDouble(now(name));
  }

  /** How bones are compared in this house where nobody asks for anything else. */
  public ComparisonRules comparison() {
    Map<ElementKey, Method> methods = new TreeMap<>();
    pairs(RuleName.METHODS)
        .forEach((element, method) -> methods.put(new ElementKey(element), method(method)));
    List<SetAside> aside = new ArrayList<>();
    pairs(RuleName.SET_ASIDE)
        .forEach((taxon, reason) -> aside.add(new SetAside(new TaxonName(taxon), reason)));
    return ComparisonRules.withDefaults()
        .withThresholds(thresholds())
        .withPriors(now(RuleName.PRIORS).equals("shelf") ? Priors.shelf() : Priors.equal())
        .withHouseChoices(methods)
        .withSetAside(aside);
  }

  private Map<String, String> pairs(RuleName name) {
    Map<String, String> pairs = new TreeMap<>();
    for (String pair : RuleContent.Pairs.pairs(now(name))) {
      int sign = pair.indexOf('=');
      pairs.put(pair.substring(0, sign).strip(), pair.substring(sign + 1).strip());
    }
    return pairs;
  }

  private static Method method(String word) {
    return Method.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** How takes may follow one another. */
  public PassRules passes() {
    return PassRules.withDefaults()
        .withRepeats(
            now(RuleName.BACK_TO_BACK_TAKES).equals("allowed")
                ? PassRules.Repeats.ALLOWED
                : PassRules.Repeats.REFUSED);
  }
}
