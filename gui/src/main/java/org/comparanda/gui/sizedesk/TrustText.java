package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.gui.sizedesk.CheckLine.Weight;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineChecks;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Diagnostics;

/** Whether a line keeps its promises, in words. */
final class TrustText {
  /** Below it a test speaks against the line; common practice, no source. */
  private static final double LEVEL = 0.05;

  private final Words words;
  private final Numbers numbers;
  private final List<CheckLine> lines = new ArrayList<>();

  private TrustText(Words words, Locale locale) {
    this.words = words;
    this.numbers = new Numbers(locale);
  }

  static List<CheckLine> of(FittedLine line, Words words, Locale locale) {
    TrustText text = new TrustText(words, locale);
    line.checks()
        .fold(
            checks -> {
              text.tell(line, checks);
              return checks;
            },
            none -> {
              text.plain("trust.none", words.said(none.reason() + " " + none.remedy()));
              return none;
            });
    return List.copyOf(text.lines);
  }

  private void tell(FittedLine line, LineChecks checks) {
    coverage(checks);
    test("trust.normal", checks.normality(), s -> s.p());
    test("trust.spread", checks.equalSpread(), s -> s.p());
    say(
        "trust.press",
        line.pressRootMeanSquare(),
        e -> words.get("trust.press.found", numbers.fixed(e, 4)));
    robust(line, checks);
    checks.taxa().forEach(this::leftOut);
    line.diagnostics().value().ifPresent(d -> pull(line, d));
  }

  private void coverage(LineChecks checks) {
    checks
        .coverage()
        .fold(
            c -> {
              Interval wilson = c.inside().wilson(0.95);
              return lines.add(
                  new CheckLine(
                      words.get("trust.coverage"),
                      words.get(
                          "trust.coverage.found",
                          c.inside().hits(),
                          c.inside().tries(),
                          numbers.upTo(100 * c.level(), 1),
                          numbers.fixed(wilson.lower(), 2),
                          numbers.fixed(wilson.upper(), 2)),
                      c.asPromised() ? Weight.FINE : Weight.CARE));
            },
            none -> plain("trust.coverage", words.said(none.reason())));
  }

  private <T> void test(String key, Outcome<T> test, Function<T, Double> chance) {
    test.fold(
        t -> {
          double p = chance.apply(t);
          boolean against = p < LEVEL;
          String shown = p < 0.001 ? "< " + numbers.fixed(0.001, 3) : numbers.fixed(p, 3);
          return lines.add(
              new CheckLine(
                  words.get(key),
                  words.get(key + (against ? ".against" : ".fine"), shown),
                  against ? Weight.CARE : Weight.FINE));
        },
        none -> plain(key, words.said(none.reason())));
  }

  private void robust(FittedLine line, LineChecks checks) {
    say(
        "trust.robust",
        checks.robust(),
        r ->
            words.get(
                r.setAside().isEmpty() ? "trust.robust.nobody" : "trust.robust.found",
                slopes(r.slopes()),
                slopes(line.slopes().stream().map(s -> s.value()).toList()),
                r.setAside().stream().map(LinePoint::label).collect(Collectors.joining(", "))));
  }

  private void leftOut(LineChecks.TaxonLeftOut out) {
    String what = words.get("trust.taxon", out.taxon(), out.animals());
    out.slopes()
        .fold(
            s ->
                lines.add(
                    new CheckLine(
                        what,
                        out.percentAtMiddle()
                            .fold(
                                moved ->
                                    words.get(
                                        "trust.taxon.found",
                                        slopes(s),
                                        (moved > 0 ? "+" : "−")
                                            + numbers.fixed(Math.abs(moved), 1)),
                                none -> slopes(s)),
                        Weight.PLAIN)),
            none -> lines.add(new CheckLine(what, words.said(none.reason()), Weight.PLAIN)));
  }

  /** The animal with the largest distance of Cook's. */
  private void pull(FittedLine line, Diagnostics diagnostics) {
    int most = 0;
    for (int i = 1; i < diagnostics.rows().size(); i++) {
      most = cook(diagnostics, i) > cook(diagnostics, most) ? i : most;
    }
    double largest = cook(diagnostics, most);
    lines.add(
        new CheckLine(
            words.get("trust.pull"),
            words.get(
                "trust.pull.found",
                line.points().get(most).label(),
                numbers.fixed(largest, 2),
                numbers.fixed(diagnostics.rows().get(most).leverage(), 2)),
            largest > 0.5 ? Weight.CARE : Weight.PLAIN));
  }

  private static double cook(Diagnostics diagnostics, int row) {
    return diagnostics.rows().get(row).cooksDistance().value().orElse(0.0);
  }

  private String slopes(List<Double> slopes) {
    return slopes.stream().map(s -> numbers.fixed(s, 3)).collect(Collectors.joining("; "));
  }

  private <T> void say(String key, Outcome<T> outcome, Function<T, String> found) {
    plain(key, outcome.fold(found, none -> words.said(none.reason())));
  }

  private boolean plain(String key, String found) {
    return lines.add(new CheckLine(words.get(key), found, Weight.PLAIN));
  }
}
