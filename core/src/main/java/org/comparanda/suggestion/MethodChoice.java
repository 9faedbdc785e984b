package org.comparanda.suggestion;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import org.comparanda.statistics.discriminant.Discriminant;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.Linear;
import org.comparanda.statistics.discriminant.Predictive;

/**
 * The method that a sample is compared by, with the reason in words. Decided on the whole sample,
 * so that one trial has one method.
 */
record MethodChoice(Discriminant method, String reason) {

  static MethodChoice of(Sample sample, ComparisonRules rules) {
    return switch (rules.method()) {
      case AUTO -> byRule(sample, rules.thresholds());
      case LINEAR -> asked(new Linear());
      case PREDICTIVE -> asked(new Predictive());
      default -> asked(new Linear());
    };
  }

  private static MethodChoice asked(Discriminant method) {
    return new MethodChoice(method, method.name() + ", as asked for");
  }

  private static MethodChoice byRule(Sample sample, Thresholds limits) {
    GroupedRows rows = sample.rows(Sample.Offer.ANIMAL);
    Optional<Integer> smallest =
        IntStream.range(0, rows.groups())
            .boxed()
            .filter(g -> rows.count(g) > 0)
            .min(Comparator.comparingInt(rows::count));
    int few = smallest.map(rows::count).orElse(0);
    if (few < limits.predictiveUnder()) {
      String who = smallest.map(g -> sample.taxa().get(g).value()).orElse("no taxon");
      return new MethodChoice(
          new Predictive(),
          "predictive, by rule: "
              + who
              + " has fewer than "
              + limits.predictiveUnder()
              + " animals ("
              + few
              + ")");
    }
    return new MethodChoice(
        new Linear(),
        "linear, by rule: every taxon has " + limits.predictiveUnder() + " animals or more");
  }
}
