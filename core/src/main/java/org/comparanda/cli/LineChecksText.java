package org.comparanda.cli;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineChecks;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.Diagnostics;

/** Whether a line can be trusted, as plain text. */
record LineChecksText(Terminal terminal, FittedLine line) {
  private static final int SHOWN = 5;

  void write(Outcome<LineChecks> outcome) {
    terminal.say("Can the line be trusted?");
    outcome.value().ifPresent(this::write);
    terminal.say(
        outcome.<String>fold(c -> "", n -> "  not estimable: " + n.reason() + " " + n.remedy()));
  }

  private void write(LineChecks checks) {
    say("normal residuals (Shapiro and Wilk)", checks.normality(), s -> p("W", s.w(), s.p()));
    say(
        "equal spread (Breusch and Pagan, studentised)",
        checks.equalSpread(),
        s -> p("chi-square", s.statistic(), s.p()));
    say(
        "held-out coverage",
        checks.coverage(),
        c -> {
          Interval wilson = c.inside().wilson(0.95);
          return c.inside().hits()
              + " of "
              + c.inside().tries()
              + " inside their "
              + Figures.five(100 * c.level())
              + " % interval (Wilson 95 % "
              + Figures.five(wilson.lower())
              + " to "
              + Figures.five(wilson.upper())
              + ")";
        });
    say(
        "robust line (trimmed)",
        checks.robust(),
        r ->
            "slope "
                + r.slopes().stream().map(Figures::five).collect(Collectors.joining(", "))
                + "; set aside: "
                + (r.setAside().isEmpty() ? "none" : names(r.setAside())));
    for (LineChecks.TaxonLeftOut out : checks.taxa()) {
      say(
          "without " + out.taxon() + " (" + Count.of(out.animals(), "animal") + ")",
          out.slopes(),
          s ->
              "slope "
                  + s.stream().map(Figures::five).collect(Collectors.joining(", "))
                  + out.percentAtMiddle()
                      .<String>fold(c -> ", middle moves " + Figures.five(c) + " %", n -> ""));
    }
    line.diagnostics().value().ifPresent(this::pull);
  }

  private void pull(Diagnostics diagnostics) {
    say("PRESS", diagnostics.press(), Figures::five);
    List<Diagnostics.Row> rows = diagnostics.rows();
    terminal.say("  who pulls the line most (Cook's distance, leverage, studentised residual):");
    IntStream.range(0, rows.size())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -cook(rows.get(i))))
        .limit(SHOWN)
        .forEach(
            i ->
                terminal.say(
                    "    "
                        + line.points().get(i).label()
                        + ": "
                        + number(rows.get(i).cooksDistance())
                        + ", "
                        + Figures.five(rows.get(i).leverage())
                        + ", "
                        + number(rows.get(i).studentised())));
  }

  private static double cook(Diagnostics.Row row) {
    return row.cooksDistance().value().orElse(Double.MAX_VALUE);
  }

  private static String number(Outcome<Double> outcome) {
    return outcome.fold(Figures::five, none -> "not estimable");
  }

  private <T> void say(
      String what, Outcome<T> outcome, java.util.function.Function<T, String> words) {
    terminal.say(
        "  " + what + ": " + outcome.<String>fold(words, n -> "not estimable. " + n.reason()));
  }

  private static String p(String name, double statistic, double p) {
    return name + " " + Figures.five(statistic) + ", p " + Figures.five(p);
  }

  private static String names(List<LinePoint> points) {
    return points.stream().map(LinePoint::label).collect(Collectors.joining(", "));
  }
}
