package org.comparanda.house;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.comparanda.suggestion.Method;
import org.comparanda.suggestion.Thresholds;

/** A rule that the house may set, what it may be set to, and what holds until it is. */
public enum RuleName {
  /** Whom to call when a bone may be human; shown at once. */
  CONTACT_CARD(
      "No contact is set yet in House Rules. Leave the bone where it is, cover it, take no picture,"
          + " tell the person responsible for the collection. Local law decides what comes next.",
      new RuleContent.Text()),
  /** Every nth called bone is looked at again. */
  SECOND_LOOK_EVERY("10", new RuleContent.Whole(1, 9999)),
  /** Below this typicality a call is looked at again. */
  SECOND_LOOK_TYPICALITY("0.05", new RuleContent.Decimal(0, 1)),
  /** Whether a bone is called before what the numbers say is shown. */
  CALL_FIRST("off", new RuleContent.OneOf(List.of("off", "on"))),
  /** Whether takes may follow one another without the bone put down. */
  BACK_TO_BACK_TAKES("refused", new RuleContent.OneOf(List.of("refused", "allowed"))),
  /** Below this best typicality nothing here fits. */
  NOTHING_FITS(number(limits().nothingFits()), new RuleContent.Decimal(0.0001, 0.2)),
  /** Below this best typicality the fit is poor. */
  POOR_FIT(number(limits().poorFit()), new RuleContent.Decimal(0.001, 0.5)),
  /** From this share on one taxon may be named. */
  ONE_SHARE(number(limits().oneShare()), new RuleContent.Decimal(0.5, 0.9999)),
  /** Share that a candidate of good typicality needs. */
  CANDIDATE_SHARE(number(limits().candidateShare()), new RuleContent.Decimal(0, 0.5)),
  /** Share that a candidate of poor typicality needs. */
  WEAK_SHARE(number(limits().weakShare()), new RuleContent.Decimal(0, 0.5)),
  /** Lower Wilson limit that the trial of the set needs before one is named. */
  GATE_LOWER_LIMIT(number(limits().gateLowerLimit()), new RuleContent.Decimal(0, 0.99)),
  /** Candidates listed before the group is named instead. */
  MOST_NAMED(String.valueOf(limits().mostNamed()), new RuleContent.Whole(2, 20)),
  /** n − k − p + 1 that a fit needs. */
  DEGREES_NEEDED(String.valueOf(limits().degreesNeeded()), new RuleContent.Whole(1, 50)),
  /** Animals that a taxon needs before it counts as ruled out. */
  RULE_OUT_ANIMALS(String.valueOf(limits().ruleOutAnimals()), new RuleContent.Whole(1, 50)),
  /** The part of true taxa that the calibrated list may miss. */
  CALIBRATED_MISS(number(limits().calibratedMiss()), new RuleContent.Decimal(0.01, 0.2)),
  /** Priors where nobody names others. */
  PRIORS("equal", new RuleContent.OneOf(List.of("equal", "shelf"))),
  /** The house's method for an element, in place of the rule: humerus=forest. */
  METHODS(
      RuleContent.Pairs.NONE,
      new RuleContent.Pairs(
          "ELEMENT", Optional.of(Stream.of(Method.values()).map(RuleName::methodWord).toList()))),
  /** Taxa that cannot occur here, with the reason. */
  SET_ASIDE(RuleContent.Pairs.NONE, new RuleContent.Pairs("TAXON", Optional.empty()));

  private final String untilSet;

  @SuppressWarnings("ImmutableEnumChecker") // records of texts and numbers, all of them
  private final RuleContent content;

  RuleName(String untilSet, RuleContent content) {
    this.untilSet = untilSet;
    this.content = content;
  }

  private static Thresholds limits() {
    return Thresholds.withDefaults();
  }

  private static String number(double value) {
    return String.valueOf(value);
  }

  private static String methodWord(Method method) {
    return method.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The rule of a word as {@link #word} writes it. */
  public static Optional<RuleName> ofWord(String word) {
    return Stream.of(values()).filter(r -> r.word().equals(word)).findFirst();
  }

  /** What holds while the house has set nothing. */
  public String untilSet() {
    return untilSet;
  }

  /** What it may be set to, in English words. */
  public String allowed() {
    return allowed(Locale.ENGLISH);
  }

  /** What it may be set to, in the words of a language. */
  public String allowed(Locale language) {
    return content.allowed(language);
  }

  /** A content in the words of a language. */
  public String said(String text, Locale language) {
    return content.said(text, language);
  }

  /** What a person typed in a language, as the house keeps it. */
  public String kept(String typed, Locale language) {
    return content.kept(typed, language);
  }

  /** Why this content can't be taken; empty when it can. */
  public Optional<String> refusal(String text) {
    return content.refusal(text);
  }

  /** As it is written in a terminal: contact-card. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
