package org.comparanda.gui.secondlook;

import java.util.List;

/**
 * The page of agreement.
 *
 * @param sentence what it comes to
 * @param kappas Cohen's and Fleiss', from the every-nth draw alone
 * @param pairs names that were given to one bone of the draw
 * @param targeted the looks for a reason, by reason
 * @param targetedPairs names that were given to one bone looked at for a reason
 */
public record AgreementShown(
    String sentence,
    List<KappaLine> kappas,
    List<PairLine> pairs,
    List<WhyLine> targeted,
    List<PairLine> targetedPairs) {
  public AgreementShown {
    kappas = List.copyOf(kappas);
    pairs = List.copyOf(pairs);
    targeted = List.copyOf(targeted);
    targetedPairs = List.copyOf(targetedPairs);
  }

  /** Nothing yet. */
  static AgreementShown nothing() {
    return new AgreementShown("", List.of(), List.of(), List.of(), List.of());
  }

  /**
   * A kappa with its 95 % interval.
   *
   * @param bones how many bones it comes from
   * @param missing why there is none and what to do; empty where there is one
   */
  public record KappaLine(
      String name, String value, String lower, String upper, String bones, String missing) {}

  /** Two names that were given to one bone, and how often. */
  public record PairLine(String one, String other, int bones) {}

  /** Looks for one reason. */
  public record WhyLine(String why, int bones, int agree, int atGroup, int differ) {}
}
